using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Cases;

/// <summary>How far off an answer may be: so much, or so much of the figure.</summary>
internal sealed record CaseTolerance(double? Absolute, double Relative)
{
    /// <summary>"6 K", "0.5 min", "10 %". Of a share, per cent are points.</summary>
    public static CaseTolerance? Read(Phrase words, Dimension of)
    {
        if (of.Kind != Quantities.QuantityKind.Percent && words.Text.TrimEnd().EndsWith('%'))
        {
            return Dimension.Share.ReadDifference(words) is { } percent ? new(null, percent / 100) : null;
        }

        return of.ReadDifference(words) is { } value ? new(value, 0) : null;
    }

    public double At(double value) => Absolute ?? (Relative * Math.Abs(value));
}

using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// A pinch of something little known does not keep a dough from being rehearsed. Up to 2 % of a mix may be unknown in some respect; there it is
/// taken to be like the rest. It moves the heat of the mix by at most 1.2 % (specific heats of foods lie between 1.3 and 4.2 kJ/kgK, of the
/// rest near 2.7), which is within the reading of a thermometer. The formula keeps it unknown. Source: small-unknowns.
/// </summary>
internal static class SmallUnknowns
{
    public const double Most = 0.02;

    /// <summary>The composition of a part as the rehearsal takes it.</summary>
    public static Composition Of(ComponentFormula component)
    {
        var whole = component.Composition;
        return Composition.Of(constituent => constituent(whole) ?? OfKnown(component.Lines, line => constituent(line.Composition)));
    }

    /// <summary>The water of a part as bakers count it, as the rehearsal takes it.</summary>
    public static Mass? WaterOf(ComponentFormula component) => component.Water
        ?? (OfKnown(component.Lines, line => line.Water is { } water ? 100 * (water / line.Mass) : null) is { } percent ? component.Mass * (percent / 100) : null);

    /// <summary>Whether a line is so small a share of its mix that its own heat does not matter.</summary>
    public static bool IsSmall(LineFormula line, IReadOnlyList<LineFormula> mix) => line.Mass.Grams <= Most * mix.Sum(other => other.Mass.Grams);

    private static double? OfKnown(IReadOnlyList<LineFormula> lines, Func<LineFormula, double?> constituent)
    {
        var (known, sum, all) = (0.0, 0.0, 0.0);
        foreach (var line in lines.Where(line => line.Mass > Mass.Zero))
        {
            all += line.Mass.Grams;
            if (constituent(line) is { } value)
            {
                known += line.Mass.Grams;
                sum += line.Mass.Grams * value;
            }
        }

        return known > 0 && all - known <= Most * all ? sum / known : null;
    }
}

namespace Doughwright.Engine.Fermentation;

/// <summary>How warm a dough is over some steps, as the kernel reads it.</summary>
/// <param name="celsius">Mean at the end of each step, [step * lanes + lane].</param>
/// <param name="shells">Each shell at the end of each step, [(step * shells + shell) * lanes + lane]; empty where it is one temperature.</param>
/// <param name="shares">Share of the volume of each shell; adds up to one.</param>
/// <param name="rates">Relative rate at the end of each step, [step * lanes + lane], where it was worked out before; empty where it was not.</param>
internal readonly ref struct RiseWarmth(ReadOnlySpan<double> celsius, ReadOnlySpan<double> shells, ReadOnlySpan<double> shares, int lanes, ReadOnlySpan<double> rates = default)
{
    public readonly ReadOnlySpan<double> Celsius = celsius;
    public readonly ReadOnlySpan<double> Shells = shells;
    public readonly ReadOnlySpan<double> Shares = shares;
    public readonly ReadOnlySpan<double> Rates = rates;
    public readonly int Lanes = lanes;

    /// <summary>A fault in the rows, in words; null when there is none.</summary>
    public string? Fault() => Celsius.Length % Lanes != 0 ? "Rows of one temperature per lane are needed."
        : !Shells.IsEmpty && Shells.Length != Celsius.Length * Shares.Length ? "Every shell needs a temperature in each step and lane."
        : !Rates.IsEmpty && Rates.Length != Celsius.Length ? "A rate is needed in each step and lane."
        : null;
}

using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Fermentation;

/// <summary>How warm a dough is over time, lane by lane.</summary>
/// <param name="StartCelsius">At the beginning, per lane.</param>
/// <param name="Celsius">At the end of each step, [step * lanes + lane].</param>
internal sealed record RiseHistory(double[] StartCelsius, double[] Celsius, Duration Step)
{
    /// <summary>Temperature of each shell at the end of each step, [(step * shells + shell) * lanes + lane]; empty where it is one temperature.</summary>
    public double[] Shells { get; init; } = [];

    /// <summary>Share of the volume of each shell.</summary>
    public double[] Shares { get; init; } = [];

    /// <summary>Relative rate at the end of each step, which follows from the temperatures alone; empty where nobody worked it out.</summary>
    public double[] Rates { get; init; } = [];

    public RiseWarmth Warmth => new(Celsius, Shells, Shares, Lanes, Rates);

    public int Lanes => StartCelsius.Length;

    public int Steps => Celsius.Length / Lanes;

    public Duration Length => Step * Steps;

    /// <summary>A dough that keeps one temperature.</summary>
    public static RiseHistory Constant(Temperature temperature, int lanes, Duration length, Duration step) =>
        Of(_ => temperature, lanes, length, step);

    /// <summary>A dough whose temperature is a function of elapsed time, the same in every lane.</summary>
    public static RiseHistory Of(Func<Duration, Temperature> at, int lanes, Duration length, Duration step)
    {
        var steps = (int)Math.Ceiling(length / step - 1e-9);
        var celsius = new double[steps * lanes];
        for (var row = 0; row < steps; row++)
            celsius.AsSpan(row * lanes, lanes).Fill(at(step * (row + 1)).Celsius);
        var start = new double[lanes];
        start.AsSpan().Fill(at(Duration.Zero).Celsius);
        return new(start, celsius, step);
    }
}

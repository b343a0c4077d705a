namespace Doughwright.Engine.Heat;

/// <summary>When each lane reaches its target.</summary>
/// <param name="Minutes">Positive infinity for a lane that never gets there.</param>
/// <param name="EndCelsius">Volume mean at that time; for a lane that never gets there what it settles at.</param>
/// <param name="SettlesAtCelsius">Where everything ends that is left alone: the air after its last change.</param>
internal sealed record CoolingTimes(double[] Minutes, double[] EndCelsius, double SettlesAtCelsius)
{
    public bool NeverEnds(int lane) => double.IsPositiveInfinity(Minutes[lane]);
}

/// <summary>Coefficients that make a body take the minutes that its author measured.</summary>
/// <param name="WattsPerSquareMetreKelvin">h per lane. Where it is not found, the value only tells where the search stood.</param>
/// <param name="Found">False where no coefficient gives these minutes: the air cannot do it, or the inside is too slow or too fast.</param>
internal sealed record CoefficientFit(double[] WattsPerSquareMetreKelvin, bool[] Found)
{
    /// <summary>The first lane's answer for so many lanes.</summary>
    public CoefficientFit ForLanes(int lanes)
    {
        var fit = new CoefficientFit(new double[lanes], new bool[lanes]);
        fit.WattsPerSquareMetreKelvin.AsSpan().Fill(WattsPerSquareMetreKelvin[0]);
        fit.Found.AsSpan().Fill(Found[0]);
        return fit;
    }
}

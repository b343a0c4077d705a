namespace Doughwright.Engine.Cases.Kinds;

/// <summary>Where in a body somebody looked.</summary>
internal enum Watched
{
    Mean,
    Core,
    Surface,
}

/// <summary>How a body went, step by step and lane by lane, at [step * lanes + lane] after each step.</summary>
internal sealed record CoolingTrack(double Start, double StepMinutes, int Lanes, double[] Mean, double[] Core, double[] Surface)
{
    /// <summary>°C after so many minutes, in every lane; straight between two steps.</summary>
    public double[] At(Watched what, double minutes)
    {
        var values = Of(what);
        var steps = values.Length / Lanes;
        // Beyond the last step it is as warm as the air, and stays so.
        var passed = Math.Min(minutes / StepMinutes, steps);
        var before = Math.Min((int)passed, steps - 1);
        var part = passed - before;
        return [.. Enumerable.Range(0, Lanes).Select(lane => Between(Value(values, before - 1, lane), Value(values, before, lane), part))];
    }

    /// <summary>Minutes until it has come to a temperature from where it began; infinite in a lane that does not.</summary>
    public double[] TimeTo(Watched what, double celsius)
    {
        var values = Of(what);
        return [.. Enumerable.Range(0, Lanes).Select(lane => TimeTo(values, lane, celsius))];
    }

    private double TimeTo(double[] values, int lane, double celsius)
    {
        var sign = celsius <= Start ? 1 : -1;
        for (var step = 0; step < values.Length / Lanes; step++)
        {
            var (before, after) = (Value(values, step - 1, lane), Value(values, step, lane));
            if (sign * (after - celsius) <= 0)
            {
                return before == after ? step * StepMinutes : StepMinutes * (step + ((before - celsius) / (before - after)));
            }
        }

        return double.PositiveInfinity;
    }

    private double Value(double[] values, int step, int lane) => step < 0 ? Start : values[(step * Lanes) + lane];

    private double[] Of(Watched what) => what switch { Watched.Mean => Mean, Watched.Core => Core, _ => Surface };

    private static double Between(double from, double to, double part) => from + (part * (to - from));
}

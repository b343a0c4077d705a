namespace Doughwright.Engine.Rehearsals;

/// <summary>One figure in every lane of a rehearsal: lane 0 is the central answer, the others are draws.</summary>
internal readonly struct PerLane(double[] values)
{
    public double[] Values { get; } = values;

    public int Count => Values.Length;

    /// <summary>The central answer.</summary>
    public double Central => Values[0];

    public double this[int lane] => Values[lane];

    public static PerLane Same(double value, int lanes)
    {
        var values = new double[lanes];
        Array.Fill(values, value);
        return new(values);
    }

    public PerLane Map(Func<double, double> change)
    {
        var values = new double[Count];
        for (var lane = 0; lane < values.Length; lane++)
        {
            values[lane] = change(Values[lane]);
        }

        return new(values);
    }

    /// <summary>Of each lane, told which.</summary>
    public PerLane Each(Func<int, double, double> change)
    {
        var values = new double[Count];
        for (var lane = 0; lane < values.Length; lane++)
        {
            values[lane] = change(lane, Values[lane]);
        }

        return new(values);
    }

    public PerLane With(PerLane other, Func<double, double, double> join)
    {
        var values = new double[Count];
        for (var lane = 0; lane < values.Length; lane++)
        {
            values[lane] = join(Values[lane], other.Values[lane]);
        }

        return new(values);
    }

    public static PerLane operator +(PerLane a, PerLane b) => a.With(b, (x, y) => x + y);

    public static PerLane operator -(PerLane a, PerLane b) => a.With(b, (x, y) => x - y);

    public static PerLane operator *(PerLane a, PerLane b) => a.With(b, (x, y) => x * y);

    public static PerLane operator /(PerLane a, PerLane b) => a.With(b, (x, y) => x / y);

    public static PerLane operator +(PerLane a, double b) => a.Map(x => x + b);

    public static PerLane operator *(PerLane a, double b) => a.Map(x => x * b);
}

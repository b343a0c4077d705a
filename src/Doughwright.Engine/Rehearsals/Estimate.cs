namespace Doughwright.Engine.Rehearsals;

/// <summary>A likely value with its range: the 10th and 90th percentile of the drawn lanes, widened to contain the likely value.</summary>
/// <param name="High">Null when the range is open: more than a tenth of the lanes never get there.</param>
public readonly record struct Estimate<T>(T Likely, T Low, T? High) where T : struct
{
    /// <summary>A value without a range.</summary>
    public static Estimate<T> Exactly(T value) => new(value, value, value);
}

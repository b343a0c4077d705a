namespace Doughwright.Engine.Fermentation;

/// <summary>
/// One stage of a rise: bulk, shaping, proof. Each lane stops where it meets the first of its two ends and waits there for the next stage.
/// </summary>
internal sealed class RiseStage
{
    private RiseStage(double[] untilGrowth, double[] untilMinutes, RiseFolds? folds)
    {
        UntilGrowth = untilGrowth;
        UntilMinutes = untilMinutes;
        Folds = folds ?? RiseFolds.AtMinutes(untilGrowth.Length);
    }

    /// <summary>Volume against the volume after mixing, per lane; +infinity for none.</summary>
    public double[] UntilGrowth { get; }

    /// <summary>Minutes from the beginning of this stage, per lane; +infinity for none.</summary>
    public double[] UntilMinutes { get; }

    public RiseFolds Folds { get; }

    /// <summary>Until each lane has grown so far.</summary>
    public static RiseStage ToGrowth(double[] growth, RiseFolds? folds = null) => new(growth, Never(growth.Length), folds);

    /// <summary>For so many minutes, per lane.</summary>
    public static RiseStage ForMinutes(double[] minutes, RiseFolds? folds = null) => new(Never(minutes.Length), minutes, folds);

    private static double[] Never(int lanes)
    {
        var values = new double[lanes];
        values.AsSpan().Fill(double.PositiveInfinity);
        return values;
    }
}

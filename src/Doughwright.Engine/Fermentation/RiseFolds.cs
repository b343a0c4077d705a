namespace Doughwright.Engine.Fermentation;

/// <summary>
/// The folds of a bulk, in order. At home they stand at the author's minutes; elsewhere at the growth the dough had at home, since a fold
/// goes by the dough and not by the clock. Each fold is done once, and what it met is kept here.
/// </summary>
internal sealed class RiseFolds
{
    /// <summary>Share of the carbon dioxide in the bubbles that a fold leaves; what is dissolved stays. Source: gas-kept.</summary>
    public const double Keeps = 0.8;

    private RiseFolds(double[] at, int lanes, bool byGrowth)
    {
        At = at;
        Lanes = lanes;
        Count = at.Length / lanes;
        IsByGrowth = byGrowth;
        Growth = new double[at.Length];
        Minutes = new double[at.Length];
        Done = new double[lanes];
        Clear();
    }

    public int Lanes { get; }

    public int Count { get; }

    /// <summary>Growth at each fold as it was done, [fold * lanes + lane]; +infinity where it was not.</summary>
    public double[] Growth { get; }

    /// <summary>
    /// Minutes from the beginning of the stage to each fold as it was done, [fold * lanes + lane]; +infinity where it was not.
    /// </summary>
    public double[] Minutes { get; }

    /// <summary>What each fold waits for: minutes or growth, [fold * lanes + lane].</summary>
    internal double[] At { get; }

    internal bool IsByGrowth { get; }

    /// <summary>Folds done in each lane.</summary>
    internal double[] Done { get; }

    public static RiseFolds AtMinutes(int lanes, params ReadOnlySpan<double> minutes)
    {
        var at = new double[minutes.Length * lanes];
        for (var fold = 0; fold < minutes.Length; fold++)
            at.AsSpan(fold * lanes, lanes).Fill(minutes[fold]);
        return new(at, lanes, byGrowth: false);
    }

    /// <param name="growth">[fold * lanes + lane]; +infinity for a fold that is left out.</param>
    public static RiseFolds AtGrowth(double[] growth, int lanes) => new(growth, lanes, byGrowth: true);

    /// <summary>The folds of another kitchen: at the growth these were done at.</summary>
    public RiseFolds Elsewhere() => AtGrowth([.. Growth], Lanes);

    /// <summary>The same folds, none of them done yet.</summary>
    public RiseFolds Again() => new(At, Lanes, IsByGrowth);

    internal void Clear()
    {
        Growth.AsSpan().Fill(double.PositiveInfinity);
        Minutes.AsSpan().Fill(double.PositiveInfinity);
        Done.AsSpan().Clear();
    }
}

using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Fermentation;

/// <summary>
/// Questions to the dough-rise model when the dough's temperatures are known beforehand. Where they are not, because heat and rise run side
/// by side, a <see cref="RiseState"/> is advanced piece by piece.
/// </summary>
internal static class Rise
{
    /// <summary>The first try is the book's rate; the next are a factor of 1.6 away, then farther, up to 5 million.</summary>
    private const double Stride = 0.5;
    private const int Expansions = 4;

    private static readonly RootTolerance Exact = new(X: 1e-15, F: 2e-13, MaxExpansions: Expansions);

    /// <summary>
    /// The rate, per lane, at which the author's own bulk comes out as measured: along the home temperatures, with the home folds, growth
    /// reaches the target exactly at the measured minutes.
    /// </summary>
    /// <param name="minutes">What was measured, per lane; lanes differ by how well the moment was read.</param>
    /// <param name="growth">What was reached, 2 for a doubled dough.</param>
    /// <param name="folds">The folds at home (<see cref="RiseFolds.AtMinutes"/>). What they met is kept in the result.</param>
    /// <param name="past">What the dough went through before; null when it comes from the mix.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperatures end before a lane's minutes do.</exception>
    public static RiseAnchor Anchor(
        RiseDough dough, RiseParameters parameters, double[] pascals, RiseHistory home, double[] minutes, double growth, RiseFolds folds, RisePast? past = null)
    {
        Require.Within(minutes.Min(), home.Step.Minutes / 1000, home.Length.Minutes * (1 + 1e-12), "Measured minutes");
        Require.Within(minutes.Max(), 0, home.Length.Minutes * (1 + 1e-12), "Measured minutes");
        Require.Within(growth, 1.001, 100, "Measured growth");

        // Every try goes along the same temperatures.
        var book = new RiseState(dough, parameters, [.. Enumerable.Repeat(1.0, dough.Lanes)], pascals, past?.StartCelsius ?? home.StartCelsius);
        (home, past) = (book.WithRates(home), past?.WithRates(book));
        var stage = RiseStage.ForMinutes(minutes, folds);
        void Misses(double[] logScale, double[] miss)
        {
            var scale = Array.ConvertAll(logScale, Elementary.Exp);
            var state = new RiseState(dough, parameters, scale, pascals, past?.StartCelsius ?? home.StartCelsius);
            past?.Take(state);
            state.Begin(stage);
            state.Advance(home);
            for (var lane = 0; lane < miss.Length; lane++)
                miss[lane] = state.Growth[lane] - growth;
        }

        var roots = LaneRoots.From(Misses, new double[dough.Lanes], Stride, rising: true, Exact);
        var found = new bool[dough.Lanes];
        var rates = new double[dough.Lanes];
        for (var lane = 0; lane < dough.Lanes; lane++)
        {
            // At an absurd rate one step can leap over the highest growth, which no dough does.
            found[lane] = roots[lane].IsFound && growth < parameters.Ceiling[lane];
            rates[lane] = found[lane] ? Elementary.Exp(roots[lane].X) : 0;
        }

        Misses(Array.ConvertAll(roots, root => root.X), new double[dough.Lanes]);
        return new(rates, found, folds);
    }

    /// <summary>
    /// Minutes after which each lane has grown so far, from where it stands; +infinity where it does not within the history.
    /// </summary>
    public static double[] TimeToGrowth(RiseState state, RiseHistory history, double growth, RiseFolds? folds = null)
    {
        var until = new double[state.Lanes];
        until.AsSpan().Fill(growth);
        state.Begin(RiseStage.ToGrowth(until, folds));
        state.Advance(history);
        return state.StoppedMinutes;
    }

    /// <summary>Volume against the volume after mixing, after so many more minutes per lane: what a proof's minutes imply.</summary>
    public static double[] GrowthAfter(RiseState state, RiseHistory history, double[] minutes, RiseFolds? folds = null)
    {
        Require.Within(minutes.Max(), 0, history.Length.Minutes * (1 + 1e-12), "Minutes of the rise");
        state.Begin(RiseStage.ForMinutes(minutes, folds));
        state.Advance(history);
        return state.Growth;
    }
}

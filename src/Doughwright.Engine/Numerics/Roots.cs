namespace Doughwright.Engine.Numerics;

/// <summary>Finds x with f(x) = 0. Never guesses: the result says when there is no sign change or no convergence.</summary>
internal static class Roots
{
    /// <summary>Between two ends at which f has different signs.</summary>
    public static Root Between(Func<double, double> f, double low, double high, RootTolerance tolerance) =>
        Solve(f, RootSearch.Between(low, high, tolerance));

    /// <summary>
    /// From a guess outwards, for an f that only rises or only falls. The first stride is <paramref name="stride"/>, and each further one
    /// twice as long, at most <see cref="RootTolerance.MaxExpansions"/> times. For a ratio, let x be its logarithm.
    /// </summary>
    public static Root From(Func<double, double> f, double guess, double stride, bool rising, RootTolerance tolerance) =>
        Solve(f, RootSearch.From(guess, stride, rising, tolerance));

    private static Root Solve(Func<double, double> f, RootSearch search)
    {
        while (!search.IsOver)
            search.Take(f(search.Next));
        return search.Result;
    }
}

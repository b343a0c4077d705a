namespace Doughwright.Engine.Numerics;

/// <summary>
/// <see cref="Roots"/> for many lanes evaluated together. Each lane keeps its own search; one that has ended stays at its answer and what
/// is evaluated there afterwards is not looked at, so no lane's digits depend on how long another takes.
/// </summary>
internal static class LaneRoots
{
    /// <param name="evaluate">Fills f (second array) for every x (first array). It must not carry anything from lane to lane.</param>
    public static Root[] Between(Action<double[], double[]> evaluate, double[] low, double[] high, RootTolerance tolerance) =>
        Solve(evaluate, [.. low.Zip(high, (l, h) => RootSearch.Between(l, h, tolerance))]);

    /// <inheritdoc cref="Roots.From"/>
    /// <param name="evaluate">Fills f (second array) for every x (first array). It must not carry anything from lane to lane.</param>
    public static Root[] From(
        Action<double[], double[]> evaluate, double[] guess, double stride, bool rising, RootTolerance tolerance) =>
        Solve(evaluate, [.. guess.Select(g => RootSearch.From(g, stride, rising, tolerance))]);

    /// <summary>The same for a function that is dear: it is asked only for the lanes whose search goes on.</summary>
    /// <param name="evaluate">Gives f (result) for x (second) of lanes (first).</param>
    public static Root[] FromOpen(Func<int[], double[], double[]> evaluate, double[] guess, double stride, bool rising, RootTolerance tolerance)
    {
        RootSearch[] searches = [.. guess.Select(g => RootSearch.From(g, stride, rising, tolerance))];
        while (searches.Any(search => !search.IsOver))
        {
            int[] open = [.. Enumerable.Range(0, searches.Length).Where(lane => !searches[lane].IsOver)];
            var f = evaluate(open, [.. open.Select(lane => searches[lane].Next)]);
            for (var at = 0; at < open.Length; at++)
            {
                searches[open[at]].Take(f[at]);
            }
        }

        return [.. searches.Select(search => search.Result)];
    }

    private static Root[] Solve(Action<double[], double[]> evaluate, RootSearch[] searches)
    {
        var x = new double[searches.Length];
        var f = new double[searches.Length];
        while (Ask(searches, x))
        {
            evaluate(x, f);
            for (var lane = 0; lane < searches.Length; lane++)
            {
                if (!searches[lane].IsOver)
                    searches[lane].Take(f[lane]);
            }
        }
        return [.. searches.Select(search => search.Result)];
    }

    private static bool Ask(RootSearch[] searches, double[] x)
    {
        var anyOpen = false;
        for (var lane = 0; lane < searches.Length; lane++)
        {
            x[lane] = searches[lane].Next;
            anyOpen |= !searches[lane].IsOver;
        }
        return anyOpen;
    }
}

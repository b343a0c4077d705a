using System.Diagnostics;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Bench;

/// <summary>What a rehearsal takes with its bake and with the same recipe unbaked: the difference is the bake's, the author's anchor included.</summary>
internal static class BakeShare
{
    public static int Tell()
    {
        var unbaked = Engine.Formulas.Formula.Balance(PotatoRolls.Recipe with { Steps = [.. PotatoRolls.Recipe.Steps.Where(step => step.Kind != Engine.Recipes.StepKind.Bake)] }, Larder.Shipped);
        foreach (var (kitchen, request) in ((string, Request)[])[("home", Request.Home), ("elsewhere", PotatoRolls.Elsewhere)])
        {
            var with = Median(() => Rehearser.Rehearse(PotatoRolls.Formula, Larder.Shipped, request));
            var without = Median(() => Rehearser.Rehearse(unbaked, Larder.Shipped, request));
            Console.WriteLine($"{kitchen,-10} with its bake {with:F2} ms, without {without:F2} ms: the bake {with - without:F2} ms, {Lanes.Widest} lanes at once");
        }

        return 0;
    }

    private static double Median(Action work)
    {
        for (var warm = 0; warm < 100; warm++)
        {
            work();
        }

        var times = new double[60];
        for (var run = 0; run < times.Length; run++)
        {
            var start = Stopwatch.GetTimestamp();
            work();
            times[run] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        Array.Sort(times);
        return times[times.Length / 2];
    }
}

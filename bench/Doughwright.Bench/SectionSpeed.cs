using System.Diagnostics;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.Bench;

/// <summary>
/// What the bakes of every demo take over their sections, the author's oven found at home included: at home, and in a kitchen 1,200 m up. The
/// reference is a bake of the same number of steps solved plainly, one entry after the other.
/// </summary>
internal static class SectionSpeed
{
    private const int Runs = 7;

    public static int Tell()
    {
        var reference = Median(PlainBanded.Solve);
        Console.WriteLine($"reference: {PlainBanded.Solutions} banded systems, one entry after the other: {reference:F0} ms");
        foreach (var file in Directory.EnumerateFiles(Path.Combine("demo", "recipes"), "*.yaml").Order(StringComparer.Ordinal))
        {
            var formula = Formula.Balance(RecipeText.Read(File.ReadAllText(file)).Recipe!, Larder.Shipped);
            var high = new Request { Kitchen = formula.Recipe.Home with { Altitude = Length.FromMetres(1200), Air = AirProfile.Constant(Temperature.FromCelsius(17)) } };
            var home = Median(() => Rehearser.BakesAtHome(formula));
            var away = Median(() => Rehearser.OverSections(Rehearser.BakesAtHome(formula), Larder.Shipped, high));
            Console.WriteLine($"{Path.GetFileNameWithoutExtension(file),-20} at home {home:F0} ms, ratio {home / reference:F2}; elsewhere, home included {away:F0} ms, ratio {away / reference:F2}");
        }

        return 0;
    }

    private static double Median(Action work)
    {
        work();
        var times = new double[Runs];
        for (var run = 0; run < Runs; run++)
        {
            var start = Stopwatch.GetTimestamp();
            work();
            times[run] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        Array.Sort(times);
        return times[Runs / 2];
    }
}

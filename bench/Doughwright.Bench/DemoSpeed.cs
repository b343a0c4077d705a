using System.Diagnostics;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.Bench;

/// <summary>
/// What every demo takes with its 32 lanes, the author's anchors included: at home, and at 17 °C, 1,200 m up in a static oven. Beside it a sum
/// over the last digit of every time and temperature, which shows at once whether a change was one of speed alone.
/// </summary>
internal static class DemoSpeed
{
    private const int Runs = 41;

    /// <param name="recipe">Name of one of them; * for all.</param>
    public static int Tell(string recipe)
    {
        foreach (var file in Directory.EnumerateFiles(Path.Combine("demo", "recipes"), $"{recipe}.yaml").Order(StringComparer.Ordinal))
        {
            var formula = Formula.Balance(RecipeText.Read(File.ReadAllText(file)).Recipe!, Larder.Shipped);
            var high = new Request
            {
                Kitchen = formula.Recipe.Home with { Altitude = Length.FromMetres(1200), Air = AirProfile.Constant(Temperature.FromCelsius(17)), Oven = OvenMode.Static },
            };
            foreach (var (kitchen, request) in ((string, Request)[])[("home", Request.Home), ("elsewhere", high)])
            {
                Rehearsal Rehearse() => Rehearser.Rehearse(formula, Larder.Shipped, request);
                var (median, quickest) = Times(() => Rehearse());
                Console.WriteLine($"{Path.GetFileNameWithoutExtension(file),-20} {kitchen,-10} {median,6:F2} ms, at best {quickest,6:F2}; digits {DigitsOf(Rehearse()):X16}; {Lanes.Widest} lanes at once");
            }
        }

        return 0;
    }

    private static ulong DigitsOf(Rehearsal rehearsal)
    {
        var sum = 14695981039346656037;
        void Take(double? value) => sum = unchecked((sum ^ BitConverter.DoubleToUInt64Bits(value ?? 0)) * 1099511628211);
        foreach (var step in rehearsal.Steps)
        {
            Take(step.Start?.Minutes);
            Take(step.Time?.Likely.Minutes);
            Take(step.Time?.Low.Minutes);
            Take(step.Time?.High?.Minutes);
            Take(step.EndTemperature?.Celsius);
        }

        return sum;
    }

    private static (double Median, double Best) Times(Action work)
    {
        for (var warm = 0; warm < 60; warm++)
        {
            work();
        }

        var times = new double[Runs];
        for (var run = 0; run < Runs; run++)
        {
            var start = Stopwatch.GetTimestamp();
            work();
            times[run] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        Array.Sort(times);
        return (times[Runs / 2], times[0]);
    }
}

using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Differences;

namespace Doughwright.App.Desk.Compare;

/// <summary>
/// How a figure is shown, and differences of it: in steps of the last place shown, so that what stands in a row can be checked by a reader with a pencil.
/// </summary>
internal sealed class Measure
{
    private readonly Func<double, double> steps;
    private readonly double perUnit;
    private readonly Func<double, string> text;
    private readonly Func<double, string> difference;
    private readonly int decimals;
    private readonly bool isTime;

    private Measure(Func<double, double> steps, double perUnit, int decimals, Func<double, string> text, Func<double, string> difference, bool isTime = false) =>
        (this.steps, this.perUnit, this.decimals, this.text, this.difference, this.isTime) = (steps, perUnit, decimals, text, difference, isTime);

    public static Measure Of(FigureKind kind, MeasureSystem system) => kind switch
    {
        FigureKind.Minutes or FigureKind.Start or FigureKind.Total or FigureKind.Hands => Minutes,
        FigureKind.GoesIn => Degrees(system, decimals: 0, celsius => Show.TemperatureAsked(Temperature.FromCelsius(celsius), system)),
        _ => Degrees(system, decimals: 1, celsius => Show.Temperature(Temperature.FromCelsius(celsius), system)),
    };

    /// <summary>Weights, to the gram.</summary>
    public static Measure Grams(MeasureSystem system) => new(Whole, 1, 0, OfGrams(system), OfGrams(system));

    /// <summary>Percentages, in tenths of a point.</summary>
    public static Measure Points { get; } = new(percent => Whole(percent * 10), 10, 1, percent => Show.Number(percent, 1), tenths => Show.Number(tenths / 10, 1));

    private static Func<double, string> OfGrams(MeasureSystem system) => grams => (grams < 0 ? "\u2212" : "") + Show.Mass(Mass.FromGrams(Math.Abs(grams)), system);

    private static Measure Minutes { get; } = new(Whole, 1, 0, OfMinutes, OfMinutes, isTime: true);

    private static string OfMinutes(double minutes) => Show.Duration(Duration.FromMinutes(minutes));

    private static Measure Degrees(MeasureSystem system, int decimals, Func<double, string> text)
    {
        if (system == MeasureSystem.Us)
        {
            return new(celsius => Whole(Temperature.FromCelsius(celsius).Fahrenheit), 9.0 / 5, 0, text, degrees => Show.Difference(TemperatureDelta.FromKelvins(degrees * 5 / 9), system));
        }

        var perUnit = decimals == 0 ? 1 : 10;
        return new(celsius => Whole(celsius * perUnit), perUnit, decimals, text, tenths => Show.Difference(TemperatureDelta.FromKelvins(tenths / perUnit), system));
    }

    /// <summary>The figure as a person reads it.</summary>
    public string Text(double value) => text(value);

    /// <summary>Second less first as they are shown, in steps of the last place.</summary>
    public double Steps(double first, double second) => steps(second) - steps(first);

    /// <summary>A difference in steps with its sign and unit: "+4 min", "−2.3 °C".</summary>
    public string Difference(double count) => (count > 0 ? "+" : "") + difference(count);

    /// <summary>Differences in steps with their signs, for a row whose unit stands beside it: "+13"; from an hour on with hours and minutes.</summary>
    public IReadOnlyList<string> Plain(IReadOnlyList<double> counts) => isTime && counts.Any(count => Math.Abs(count) >= 60)
        ? [.. counts.Select(Difference)]
        : [.. counts.Select(count => (count > 0 ? "+" : "") + Show.Number(decimals == 0 ? count : count / 10, decimals))];

    /// <summary>A difference without its sign.</summary>
    public string Size(double count) => difference(Math.Abs(count));

    /// <summary>The parts of a difference in whole steps that add up to it as shown: rounded, and what is over or missing goes where rounding took or gave most.</summary>
    public IReadOnlyList<double> ShareOut(IReadOnlyList<double> parts, double total)
    {
        var exact = parts.Select(part => part * perUnit).ToArray();
        var shown = exact.Select(Whole).ToArray();
        for (var over = shown.Sum() - total; over != 0 && shown.Length > 0; over -= Math.Sign(over))
        {
            var sign = Math.Sign(over);
            var most = Enumerable.Range(0, shown.Length).MaxBy(index => (shown[index] - exact[index]) * sign);
            shown[most] -= sign;
        }

        return shown;
    }

    private static double Whole(double value) => Math.Round(value, MidpointRounding.AwayFromZero);
}

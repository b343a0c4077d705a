using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Sides;

/// <summary>Unit of a figure that two recipes are compared by.</summary>
public enum SideUnit
{
    Count,
    Grams,
    Percent,
    Celsius,
    Minutes,
    Millimetres,
    Metres,

    /// <summary>A multiple: of the volume after mixing.</summary>
    Times,
}

/// <summary>A value as a figure, so that a difference has a size and a sign.</summary>
public readonly record struct SideNumber(double Value, SideUnit Unit)
{
    /// <summary>Two values as figures; null when they have no unit in common.</summary>
    internal static (SideNumber First, SideNumber Second)? Both(object? first, object? second)
    {
        foreach (var one in Of(first))
        {
            foreach (var other in Of(second))
            {
                if (one.Unit == other.Unit && (first is not StepEnd || first.GetType() == second!.GetType()))
                {
                    return (one, other);
                }
            }
        }

        return null;
    }

    /// <summary>The figures of a value, the one that bakers compare by first.</summary>
    private static IEnumerable<SideNumber> Of(object? value) => value switch
    {
        LineAmount amount => [.. Percents(amount.OfFlour), .. Masses(amount.Mass)],
        Measured measured => [.. Times(measured.Time), .. Temperatures(measured.Temperature)],
        Percent percent => Percents(percent),
        Mass mass => Masses(mass),
        Temperature temperature => Temperatures(temperature),
        Duration time => Times(time),
        Length length when length.Metres >= 1 => [new(length.Metres, SideUnit.Metres)],
        Length length => [new(1000 * length.Metres, SideUnit.Millimetres)],
        int count => [new(count, SideUnit.Count)],
        LineWarmth { Stated: { } stated } => Temperatures(stated),
        StepEnd.AfterTime end => Times(end.Time),
        StepEnd.ByCue end => Times(end.Estimate),
        StepEnd.WhenRipe { About: { } about } => Times(about),
        StepEnd.AtTemperature end => Temperatures(end.Temperature),
        StepEnd.AtCore end => Temperatures(end.Temperature),
        StepEnd.AtGrowth end => [new(end.Times, SideUnit.Times)],
        _ => [],
    };

    private static SideNumber[] Percents(Percent? percent) => percent is { } known ? [new(known.Value, SideUnit.Percent)] : [];

    private static SideNumber[] Masses(Mass? mass) => mass is { } known ? [new(known.Grams, SideUnit.Grams)] : [];

    private static SideNumber[] Temperatures(Temperature? temperature) => temperature is { } known ? [new(known.Celsius, SideUnit.Celsius)] : [];

    private static SideNumber[] Times(Duration? time) => time is { } known ? [new(known.Minutes, SideUnit.Minutes)] : [];
}

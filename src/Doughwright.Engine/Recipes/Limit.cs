using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Recipes;

/// <summary>
/// A range that a value must lie in, ends included. Outside it is an error that says the range and the reason, never a silent clamp.
/// </summary>
/// <param name="Kind">Kind of the finding, under which the words of the program give the reason.</param>
public sealed record Limit<T>(string Kind, T Low, T High) where T : struct, IComparable<T>
{
    /// <summary>Whether a value lies within the limits, ends included.</summary>
    public bool Holds(T value) => value.CompareTo(Low) >= 0 && value.CompareTo(High) <= 0;
}

/// <summary>
/// The limits of everything a person can say, in a text and on the command line alike. Source: limits-house (ours: where the models and a
/// kitchen end).
/// </summary>
public static class Limits
{
    public static Limit<Temperature> Air { get; } = Celsius("air-outside-limits", -5, 45);

    public static Limit<Length> Altitude { get; } = new("altitude-outside-limits", Length.FromMetres(-430), Length.FromMetres(5000));

    public static Limit<Temperature> Fridge { get; } = Celsius("fridge-outside-limits", -2, 12);

    public static Limit<Temperature> Tap { get; } = Celsius("tap-outside-limits", 0, 60);

    public static Limit<Temperature> ProofingPlace { get; } = Celsius("proofing-place-outside-limits", -5, 60);

    public static Limit<Temperature> Oven { get; } = Celsius("oven-outside-limits", 80, 330);

    /// <summary>How far an oven is off its dial: farther off, it is broken.</summary>
    public static Limit<TemperatureDelta> OffDial { get; } = new("oven-runs-outside-limits", TemperatureDelta.FromKelvins(-60), TemperatureDelta.FromKelvins(60));

    /// <summary>How long an oven takes to heat.</summary>
    public static Limit<Duration> OvenHeats { get; } = new("oven-heats-outside-limits", Duration.FromMinutes(2), Duration.FromHours(4));

    /// <summary>How long it takes after its door was open.</summary>
    public static Limit<Duration> OvenRecovers { get; } = new("oven-recovers-outside-limits", Duration.FromMinutes(0.2), Duration.FromMinutes(30));

    /// <summary>A stone or a steel: thinner it is a tray, thicker it is never hot.</summary>
    public static Limit<Length> Hearth { get; } = new("hearth-outside-limits", Length.FromMillimetres(2), Length.FromMillimetres(100));

    /// <summary>Moments within a bake: steam, a lid, another dial.</summary>
    public static Limit<Duration> WithinBake { get; } = new("within-bake-outside-limits", Duration.FromMinutes(0.5), Duration.FromHours(12));

    /// <summary>A lamp inside a place made warm: more would be a heater.</summary>
    public static Limit<Power> Lamp { get; } = new("lamp-outside-limits", Power.FromWatts(1), Power.FromWatts(100));

    /// <summary>A place made warm for a dough by household means.</summary>
    public static Limit<Temperature> WarmPlace { get; } = Celsius("warm-place-outside-limits", 10, 40);

    /// <summary>What is poured and what a step ends at.</summary>
    public static Limit<Temperature> Matter { get; } = Celsius("temperature-outside-limits", -30, 150);

    /// <summary>What goes in. Water boils at the upper end, and everything else in a dough is wet.</summary>
    public static Limit<Temperature> Line { get; } = Celsius("line-outside-limits", -30, 100);

    /// <summary>A dough right after mixing.</summary>
    public static Limit<Temperature> Mixed { get; } = Celsius("mixed-outside-limits", 0, 60);

    /// <summary>The core of a bake: below, the crumb is raw; above, nothing is left of it but crust.</summary>
    public static Limit<Temperature> Core { get; } = Celsius("core-outside-limits", 50, 120);

    public static Limit<Mass> Dough { get; } = new("dough-outside-limits", Mass.FromGrams(20), Mass.FromKilograms(500));

    /// <summary>A line as a percentage of its part's base. A large line on a small base, such as syrup on its lemon zest, comes to thousands.</summary>
    public static Limit<Percent> Share { get; } = new("share-outside-limits", Percent.FromValue(0.001), Percent.FromValue(100_000));

    /// <summary>From here on a home kitchen is left behind: a hint, no error.</summary>
    public static Mass LargeDough { get; } = Mass.FromKilograms(20);

    public static Limit<Mass> Piece { get; } = new("piece-outside-limits", Mass.FromGrams(5), Mass.FromKilograms(5));

    /// <summary>What 100 ml of something edible weigh: from whipped and powdered to syrup.</summary>
    public static Limit<Mass> HundredMillilitres { get; } = new("hundred-millilitres-outside-limits", Mass.FromGrams(10), Mass.FromGrams(200));

    /// <summary>One of two weighings.</summary>
    public static Limit<Mass> Weighing { get; } = new("weighing-outside-limits", Mass.FromGrams(0.1), Mass.FromKilograms(500));

    /// <summary>Water that a flour takes up, on its weight.</summary>
    public static Limit<Percent> Absorption { get; } = new("absorption-outside-limits", Percent.FromValue(30), Percent.FromValue(120));

    public static Limit<Mass> Vessel { get; } = new("vessel-outside-limits", Mass.Zero, Mass.FromKilograms(100));

    public static Limit<Mass> Scale { get; } = new("scale-outside-limits", Mass.FromGrams(0.001), Mass.FromKilograms(1));

    /// <summary>Hands, folds and changes of the air: times that may be zero.</summary>
    public static Limit<Duration> Hands { get; } = new("hands-outside-limits", Duration.Zero, Duration.FromHours(14 * 24));

    /// <summary>How long a step lasts: one that takes no time is a slip of the finger.</summary>
    public static Limit<Duration> Step { get; } = new("step-outside-limits", Duration.FromMinutes(0.5), Duration.FromHours(14 * 24));

    /// <summary>How long something keeps: an hour is a bake to be eaten now, two years the end of any freezer.</summary>
    public static Limit<Duration> Keeping { get; } = new("keeping-outside-limits", Duration.FromHours(1), Duration.FromHours(730 * 24));

    public static Limit<Length> Depth { get; } = new("depth-outside-limits", Length.FromMillimetres(1), Length.FromMillimetres(300));

    /// <summary>A rise that can be seen, up to far more than any dough does.</summary>
    public static Limit<double> Growth { get; } = new("growth-outside-limits", 1.05, 20);

    public static Limit<int> Pieces { get; } = new("pieces-outside-limits", 1, 100_000);

    public static Limit<int> Trays { get; } = new("trays-outside-limits", 1, 100);

    private static Limit<Temperature> Celsius(string kind, double low, double high) =>
        new(kind, Temperature.FromCelsius(low), Temperature.FromCelsius(high));
}

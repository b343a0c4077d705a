namespace Doughwright.Engine.Quantities;

/// <summary>A unit as people write it, with its exact factor.</summary>
/// <param name="Symbol">As written, upper and lower case as here.</param>
/// <param name="Factor">Times the base: g for a mass, s for a duration, m for a length, l for a volume, % for a percentage, W for a power. Unused for
/// temperatures.</param>
/// <param name="Family">Units of one family may follow each other from large to small: "1 lb 4 oz". Null: the unit stands alone.</param>
internal sealed record Unit(string Symbol, QuantityKind Kind, decimal Factor, string? Family = null)
{
    /// <summary>All units. Source: units-exact (pound and ounce of 1959), units-inch.</summary>
    public static IReadOnlyList<Unit> All { get; } =
    [
        new("g", QuantityKind.Mass, 1m, "metric"),
        new("kg", QuantityKind.Mass, 1000m, "metric"),
        new("mg", QuantityKind.Mass, 0.001m),
        new("oz", QuantityKind.Mass, 28.349523125m, "avoirdupois"),
        new("lb", QuantityKind.Mass, 453.59237m, "avoirdupois"),
        new("C", QuantityKind.Temperature, 0m),
        new("°C", QuantityKind.Temperature, 0m),
        new("F", QuantityKind.Temperature, 0m),
        new("°F", QuantityKind.Temperature, 0m),
        new("s", QuantityKind.Duration, 1m, "time"),
        new("min", QuantityKind.Duration, 60m, "time"),
        new("h", QuantityKind.Duration, 3600m, "time"),
        new("d", QuantityKind.Duration, 86400m, "time"),
        new("mm", QuantityKind.Length, 0.001m),
        new("cm", QuantityKind.Length, 0.01m),
        new("m", QuantityKind.Length, 1m),
        new("in", QuantityKind.Length, 0.0254m, "feet"),
        new("ft", QuantityKind.Length, 0.3048m, "feet"),
        new("l", QuantityKind.Volume, 1m),
        new("ml", QuantityKind.Volume, 0.001m),
        new("%", QuantityKind.Percent, 1m),
        new("W", QuantityKind.Power, 1m),
    ];

    private static readonly Dictionary<string, Unit> BySymbol = All.ToDictionary(unit => unit.Symbol);

    /// <summary>What people also write. Offered, never taken, so that every text says the same thing in the same way.</summary>
    private static readonly Dictionary<string, string> Offers = new(StringComparer.OrdinalIgnoreCase)
    {
        ["gr"] = "g",
        ["gm"] = "g",
        ["gms"] = "g",
        ["gram"] = "g",
        ["grams"] = "g",
        ["gramme"] = "g",
        ["grammes"] = "g",
        ["kgs"] = "kg",
        ["kilo"] = "kg",
        ["kilos"] = "kg",
        ["ounce"] = "oz",
        ["ounces"] = "oz",
        ["lbs"] = "lb",
        ["pound"] = "lb",
        ["pounds"] = "lb",
        ["celsius"] = "C",
        ["degC"] = "C",
        ["fahrenheit"] = "F",
        ["degF"] = "F",
        ["sec"] = "s",
        ["secs"] = "s",
        ["seconds"] = "s",
        ["mins"] = "min",
        ["minute"] = "min",
        ["minutes"] = "min",
        ["hr"] = "h",
        ["hrs"] = "h",
        ["hour"] = "h",
        ["hours"] = "h",
        ["day"] = "d",
        ["days"] = "d",
        ["metre"] = "m",
        ["metres"] = "m",
        ["meter"] = "m",
        ["meters"] = "m",
        ["inch"] = "in",
        ["inches"] = "in",
        ["foot"] = "ft",
        ["feet"] = "ft",
        ["litre"] = "l",
        ["litres"] = "l",
        ["liter"] = "l",
        ["liters"] = "l",
        ["percent"] = "%",
        ["watt"] = "W",
        ["watts"] = "W",
    };

    public static Unit? Find(string symbol) => BySymbol.GetValueOrDefault(symbol);

    /// <summary>The unit that was probably meant, if it measures what is asked for.</summary>
    public static string? Offer(string written, QuantityKind kind)
    {
        var symbol = Offers.GetValueOrDefault(written)
            ?? All.Where(unit => unit.Kind == kind)
                .FirstOrDefault(unit => string.Equals(unit.Symbol, written, StringComparison.OrdinalIgnoreCase))?.Symbol;
        return symbol is not null && Find(symbol)?.Kind == kind ? symbol : null;
    }

    /// <summary>The units that fit, for a person: "g, kg, mg, oz, lb".</summary>
    public static string Fitting(QuantityKind kind) =>
        string.Join(", ", All.Where(unit => unit.Kind == kind && !unit.Symbol.StartsWith('°')).Select(unit => unit.Symbol));
}

using CsCheck;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>
/// A sound recipe in a few choices: lean or enriched, with or without scald and puree, folded or not, measured or not, one loaf or many
/// rolls. It becomes a text, so that the laws hold for what a person can write.
/// </summary>
internal sealed record Bake
{
    public double Flour { get; init; } = 500;

    public double Water { get; init; } = 60;

    public double Yeast { get; init; } = 0.8;

    public bool Enriched { get; init; }

    public bool Scald { get; init; }

    public bool Puree { get; init; }

    public bool Order { get; init; } = true;

    /// <summary>Dough temperature the author measured; null when nobody did.</summary>
    public double? Dough { get; init; } = 25;

    /// <summary>Minutes of the bulk; null when nobody measured it.</summary>
    public double? Bulk { get; init; } = 100;

    public double Proof { get; init; } = 60;

    public double Oven { get; init; } = 30;

    public double Cooling { get; init; } = 100;

    /// <summary>When it is folded, in minutes.</summary>
    public int[] Folds { get; init; } = [];

    public int Pieces { get; init; } = 1;

    public double Air { get; init; } = 21;

    public double Altitude { get; init; } = 5;

    public OvenMode Mode { get; init; } = OvenMode.Fan;

    /// <summary>Everything that can be written, within what a teacher bakes at home.</summary>
    public static Gen<Bake> Any { get; } = Gen.Select(
        Gen.Select(Gen.Double[150, 1700], Gen.Double[52, 75], Gen.Double[0.3, 2], Gen.Int[1, 24], Gen.Bool),
        Gen.Select(Gen.Bool, Gen.Bool, Gen.Bool, Gen.Bool, Gen.Int[0, 2]),
        Gen.Select(Gen.Double[45, 240], Gen.Double[30, 120], Gen.Double[12, 55], Gen.Double[60, 140], Gen.Double[-1, 4]),
        Gen.Select(Gen.Double[17, 26], Gen.Double[-300, 2500], Gen.Bool))
        .Select((size, sort, times, kitchen) => new Bake
        {
            Flour = size.Item1,
            Water = size.Item2,
            Yeast = size.Item3,
            Pieces = size.Item4,
            Order = size.Item5,
            Enriched = sort.Item1,
            Scald = sort.Item2,
            Puree = sort.Item3,
            Dough = sort.Item4 ? kitchen.Item1 + 2 + times.Item5 : null,
            Folds = [.. Enumerable.Range(1, sort.Item5).Select(fold => (int)(times.Item1 * fold / 4))],
            Bulk = times.Item1,
            Proof = times.Item2,
            Oven = times.Item3,
            Cooling = times.Item4,
            Air = kitchen.Item1,
            Altitude = kitchen.Item2,
            Mode = kitchen.Item3 ? OvenMode.Fan : OvenMode.Static,
        });

    /// <summary>One of each sort, for laws that take long.</summary>
    public static IReadOnlyList<Bake> Table { get; } =
    [
        new(),
        new() { Enriched = true, Scald = true, Puree = true, Folds = [45], Pieces = 10, Dough = 25.5 },
        new() { Dough = null, Folds = [20, 50], Altitude = 1200 },
        new() { Puree = true, Enriched = true, Flour = 1200, Pieces = 30, Bulk = 150, Air = 24, Dough = 27 },
        new() { Scald = true, Yeast = 0.4, Bulk = 200, Mode = OvenMode.Static, Air = 19, Dough = 24 },
        new() { Flour = 2500, Pieces = 3, Altitude = 2400, Bulk = 75, Yeast = 1.2 },
        new() { Bulk = null, Dough = null, Enriched = true },
    ];

    public Recipe Recipe
    {
        get
        {
            var reading = RecipeText.Read(Text);
            Assert.True(reading.Sound, string.Join(", ", reading.Findings.Select(finding => finding.Kind)) + "\n" + Text);
            return reading.Recipe!;
        }
    }

    public Formula Formula => Formula.Balance(Recipe, Engine.Ingredients.Larder.Shipped);

    private string Text => string.Join('\n', Head.Concat(Parts).Concat(Steps).Append(""));

    private static string G(double grams) => FormattableString.Invariant($"{Math.Round(grams, 2)} g");

    private static string Min(double minutes) => FormattableString.Invariant($"{Math.Round(minutes, 3)} min");

    private static string C(double celsius) => FormattableString.Invariant($"{Math.Round(celsius, 2)} C");

    private IEnumerable<string> Head =>
    [
        "doughwright: 1",
        "title: A bake",
        $"make: {Pieces} pieces of {G(DoughGrams / Pieces)}",
        "home:",
        $"  air: {C(Air)}",
        FormattableString.Invariant($"  altitude: {Math.Round(Altitude)} m"),
        $"  oven: {(Mode == OvenMode.Fan ? "fan" : "static")}",
        "parts:",
    ];

    private double DoughGrams =>
        Flour * (1.018 + (Water / 100) + (Yeast / 100) + (Scald ? 0.25 : 0) + (Puree ? 0.4 : 0) + (Enriched ? 0.33 : 0));

    private IEnumerable<string> Parts =>
    [
        .. Scald ? ["  scald:", $"    strong white flour: {G(Flour * 0.2)}", $"    water: {G(Flour * 0.25)}, boiling"] : Array.Empty<string>(),
        .. Puree ? ["  potato:", "    kind: puree", $"    potato: {G(Flour * 0.4)}, boiled, peeled, mashed"] : Array.Empty<string>(),
        "  dough:",
        $"    strong white flour: {G(Flour * (Scald ? 0.8 : 1))}",
        $"    water: {G(Flour * Water / 100)}, from the tap",
        .. Scald ? ["    scald: all of it"] : Array.Empty<string>(),
        .. Puree ? ["    potato: all of it"] : Array.Empty<string>(),
        .. Enriched
            ? [$"    egg: {G(Flour * 0.12)}", $"    sugar: {G(Flour * 0.08)}", $"    butter: {G(Flour * 0.13)}, soft"]
            : Array.Empty<string>(),
        $"    salt: {G(Flour * 0.018)}",
        $"    instant yeast: {G(Flour * Yeast / 100)}",
        "steps:",
    ];

    private IEnumerable<string> Steps =>
    [
        .. Puree
            ?
            [
                "  peel:", "    kind: prepare", "    of: potato", "    hands: 8 min",
                "  boil:", "    kind: cook", "    of: potato", "    where: hob", "    ends: after 20 min", "    cue: soft",
                "  mash:", "    kind: cool", "    of: potato", "    hands: 6 min", "    vessel: steel tray, 300 g", "    depth: 1 cm",
                "    cover: covered", $"    ends: at {C(Air + 6)}", $"    measured: {Min(Cooling)}",
            ]
            : Array.Empty<string>(),
        .. Scald
            ?
            [
                "  scald:", "    of: scald", "    hands: 3 min", "    vessel: steel bowl, 150 g", "    cover: covered",
                $"    ends: at {C(Air + 7)}", $"    measured: {Min(Cooling * 1.1)}",
            ]
            : Array.Empty<string>(),
        "  mix:", "    of: dough", "    hands: 12 min", "    way: by hand", "    vessel: steel bowl, 500 g",
        .. Order ? ["    order: water, salt, instant yeast, strong white flour"] : Array.Empty<string>(),
        .. Dough is { } dough ? [$"    measured: {C(dough)}"] : Array.Empty<string>(),
        "  bulk:", "    of: dough", "    vessel: steel bowl, 500 g", "    cover: covered",
        .. Folds.Length > 0 ? Folds.Select(fold => $"      - at {fold} min, 2 min by hand").Prepend("    folds:") : [],
        "    ends: at 2 times its volume",
        .. Bulk is { } bulk ? [$"    measured: {Min(bulk)}"] : Array.Empty<string>(),
        "    cue: at the tape",
        "  shape:", "    of: dough", "    hands: 10 min",
        "  proof:", "    of: dough", "    cover: cloth", $"    measured: {Min(Proof)}", "    cue: springs back slowly",
        "  bake:", "    of: dough", "    oven: 200 C", $"    measured: {Min(Oven)}", "    cue: golden",
        "  cool:", "    kind: finish", "    of: dough", "    ends: after 30 min",
    ];

    /// <summary>Other kitchens: air constant or changing, heights, ovens, a warm place or none.</summary>
    public static Gen<Kitchen> AnyKitchen { get; } = Gen.Select(
        Gen.Double[5, 35], Gen.Double[-400, 4500], Gen.Bool, Gen.Double[5, 35], Gen.Double[30, 500], Gen.Int[0, 2])
        .Select((air, altitude, fan, later, after, more) => new Kitchen
        {
            Air = more == 0
                ? AirProfile.Constant(Celsius(air))
                : AirProfile.Of([(Duration.Zero, Celsius(air)), (Duration.FromMinutes(after), Celsius(later))]),
            Altitude = Length.FromMetres(altitude),
            Oven = fan ? OvenMode.Fan : OvenMode.Static,
            ProofingPlace = more == 2 ? Celsius(28) : null,
        });

    public static Temperature Celsius(double celsius) => Temperature.FromCelsius(celsius);

    public override string ToString() => Text;
}

using Doughwright.Engine.Baking;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Tests;

/// <summary>
/// A rehearsal made by hand, with a step of every sort there can be. Its figures mean nothing: it is there so that what is printed can be tested apart
/// from what is computed.
/// </summary>
internal static class Samples
{
    public static Recipe Recipe { get; } = RecipeText.Read(File.ReadAllText(House.PotatoRolls)).Recipe!;

    private static Kitchen Kitchen { get; } = new()
    {
        Name = "Kestrel cottage, winter",
        Air = AirProfile.Of([(Duration.Zero, Celsius(17)), (Duration.FromHours(9), Celsius(21))]),
        Altitude = Length.FromMetres(1200),
        Oven = OvenMode.Static,
        ProofingPlace = Celsius(26),
    };

    public static Request Request { get; } = new() { Kitchen = Kitchen, Dough = Celsius(26), Free = ["potato", "scald"] };

    public static Rehearsal Rehearsal { get; } = Make(atHome: false);

    public static Rehearsal Home { get; } = Make(atHome: true);

    public static IReadOnlyList<Finding> Findings { get; } =
    [
        new() { Kind = "dough-without-free", Grade = Grade.Error, Place = "steps.mix", Position = new(71, 5), Arguments = new Dictionary<string, object> { ["option"] = "--free" } },
        new() { Kind = "step-unknown", Grade = Grade.Warning, Place = "", Arguments = new Dictionary<string, object> { ["option"] = "--at", ["given"] = "x", ["known"] = new[] { "a", "b" }, ["nearest"] = "" } },
        new() { Kind = "file-unreadable", Grade = Grade.Hint, Safety = true, Place = "parts.dough", Arguments = new Dictionary<string, object> { ["file"] = "f" } },
    ];

    private static Rehearsal Make(bool atHome) => new()
    {
        Recipe = Recipe,
        Formula = Formula.Balance(Recipe, Larder.Shipped),
        Kitchen = atHome ? Recipe.Home : Kitchen,
        AtHome = atHome,
        Pressure = Pressure.FromPascals(87720),
        Boils = Celsius(95.98),
        Steps = [.. Recipe.Steps.Select((step, i) => Step(step, i, atHome))],
        Components =
        [
            new("scald", ComponentKind.Scald, new(Celsius(72.8), Celsius(71), Celsius(74.25))),
            new("potato", ComponentKind.Puree, null),
            new("dough", ComponentKind.Dough, Estimate<Temperature>.Exactly(Celsius(26))),
        ],
        Solutions = atHome ? [] :
        [
            new(["potato", "scald"], new(Celsius(32.2), Celsius(31), Celsius(33.6)), [new("yeast", Celsius(31.9)), new("yolk", Celsius(30))], true),
            new(["potato"], new(Celsius(46.9), Celsius(45), null), [new("yeast", Celsius(44.1))], false),
            new(["scald"], null, [], false),
        ],
        Total = atHome ? Estimate<Duration>.Exactly(Minutes(401)) : new(Minutes(480), Minutes(430), null),
        Hands = Minutes(48),
        Findings = [],
    };

    private static RehearsedStep Step(Step step, int i, bool atHome) => new()
    {
        Id = step.Id,
        Kind = step.Kind,
        Name = step.Name,
        Component = step.Component,
        Basis = (Basis)(i % 3),
        Start = i == 4 ? null : Minutes(20 * i),
        Time = i switch
        {
            2 => null,
            3 => null,
            5 => new(Minutes(136), Minutes(122), Minutes(150)),
            7 => new(Minutes(97), Minutes(83), null),
            _ => Estimate<Duration>.Exactly(Minutes(5 + (12.4 * i))),
        },
        Hands = step.Hands,
        StartTemperature = i % 2 == 0 ? null : Celsius(96.04 - (7 * i)),
        EndTemperature = i % 4 == 0 ? null : Celsius(28 - i),
        SettlesAt = i == 2 ? Celsius(30) : null,
        Growth = i == 5 ? 2 : null,
        HomeTime = atHome || i == 6 ? null : Minutes(100 + i),
        Cue = step.Cue,
        Dial = step.Oven is { } oven ? DialPairs.Of(oven.Dial, OvenMode.Fan, atHome ? OvenMode.Fan : OvenMode.Static) : null,
        Events = i == 5 ? [new("fold", new(Minutes(58), Minutes(52), Minutes(65)), Minutes(2))] : [],
        Why = () => Reason.Sum("nothing", 26.04, "°C", [Reason.Leaf("together", 24.44, "°C", "butter"), Reason.Leaf("at-least", -1.6, "K", source: "handling")]),
    };

    private static Temperature Celsius(double celsius) => Temperature.FromCelsius(celsius);

    private static Duration Minutes(double minutes) => Duration.FromMinutes(minutes);
}

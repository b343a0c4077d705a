using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using static Doughwright.Engine.Tests.Formulas.RecipeBuilder;

namespace Doughwright.Engine.Tests.Formulas;

/// <summary>The potato rolls of demo/recipes/potato-rolls.yaml, built in code.</summary>
internal static class PotatoRolls
{
    public static Recipe Sound { get; } = new()
    {
        Title = "Potato rolls",
        Make = new(10, "rolls", Grams(80)),
        Home = Home,
        Tools =
        [
            "scale", "thermometer", "knife", "pot", "fork", "steel tray of 300 g", "steel bowl of 150 g", "steel bowl of 500 g", "tape",
            "brush", "two baking trays",
        ],
        Components =
        [
            Part(
                "scald",
                ComponentKind.Scald,
                Of("strong white flour", 80),
                Of("water", 100) with { Warmth = new(WarmthKind.Boiling, null) }),
            Part("potato", ComponentKind.Puree, Of("potato", 160, "boiled", "peeled", "mashed")),
            Dough(
                Of("strong white flour", 320),
                AllOf("scald"),
                AllOf("potato"),
                Of("egg", 50),
                Of("sugar", 30),
                Of("butter", 50, "soft"),
                Of("salt", 7),
                Of("instant yeast", 4)),
            Part("wash", ComponentKind.Wash, Of("milk", 15)),
        ],
        Steps =
        [
            Step("peel", StepKind.Prepare, "potato") with { Name = "Peel and dice the potato", Tools = ["knife"] },
            Step("boil", StepKind.Cook, "potato") with
            {
                Name = "Boil",
                Where = Where.Hob,
                Vessel = Pot,
                End = After(20),
                Cue = "a knife slides in",
            },
            Step("mash", StepKind.Cool, "potato") with
            {
                Name = "Mash and cool",
                Vessel = new(VesselShape.Tray, VesselMaterial.Steel, Grams(300), false),
                Tools = ["fork"],
                End = new StepEnd.AtTemperature(Temperature.FromCelsius(28)),
                Words = "Mash it with a fork and spread it 1 cm deep on the tray. Cover it.",
            },
            Step("scald", StepKind.Scald, "scald") with
            {
                Name = "Scald the flour",
                Vessel = Bowl(150),
                Words = "Pour the boiling water over the flour and stir until no dry flour is left. Cover it.",
            },
            Step("mix", StepKind.Mix) with
            {
                Name = "Mix by hand",
                Vessel = Bowl(500),
                Way = MixingWay.ByHand,
                Order = ["scald", "potato", "egg", "sugar", "instant-yeast", "salt", "butter", "strong-white-flour"],
                Measured = new(null, Temperature.FromCelsius(26), "9 November", 1),
            },
            Step("bulk", StepKind.Bulk) with
            {
                Name = "Bulk",
                Vessel = Bowl(500),
                Cue = "at the tape on the bowl",
                Tools = ["tape"],
                Words = "Mark the bowl with tape at twice the height. Cover it and let it double, about [bulk time].",
            },
            Step("shape", StepKind.Shape) with { Name = "Divide and shape" },
            Step("proof", StepKind.Proof) with { Name = "Final proof", Trays = 2, Cover = Cover.Cloth, Cue = "springs back slowly" },
            Step("brush", StepKind.Glaze, "wash") with { Name = "Brush with milk", Tools = ["brush"] },
            Step("bake", StepKind.Bake) with
            {
                Name = "Bake",
                Oven = new(Temperature.FromCelsius(170), OvenMode.Fan),
                Trays = 2,
                Cue = "golden all over",
            },
            Step("cool", StepKind.Cool) with { Name = "Cool", End = After(20) },
        ],
    };

    private static Vessel Pot => new(VesselShape.Pot, null, null, false);

    private static Vessel Bowl(double grams) => new(VesselShape.Bowl, VesselMaterial.Steel, Grams(grams), false);

    private static StepEnd After(double minutes) => new StepEnd.AfterTime(Duration.FromMinutes(minutes));

    /// <summary>The same recipe with its potato weighed raw and cooked.</summary>
    public static Recipe Weighed(double rawGrams, double cookedGrams) =>
        WithPotato(line => line with { Weighed = new(Grams(rawGrams), Grams(cookedGrams)) });

    public static Recipe WithPotato(Func<Line, Line> change) => Sound with
    {
        Components = [.. Sound.Components.Select(part => part.Id == "potato" ? part with { Lines = [change(part.Lines[0])] } : part)],
    };

    public static Recipe WithStep(string id, Func<Step, Step> change) => Sound with
    {
        Steps = [.. Sound.Steps.Select(step => step.Id == id ? change(step) : step)],
    };
}

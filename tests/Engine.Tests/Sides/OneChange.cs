using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Tests.Sides;

/// <summary>Single changes of a recipe, each the way a person makes one. Null where the recipe has nothing of the kind.</summary>
internal static class OneChange
{
    public static IReadOnlyList<(string Name, Func<Recipe, Recipe, Recipe?> Make)> All { get; } =
    [
        ("title", (recipe, other) => recipe with { Title = other.Title }),
        ("region", (recipe, other) => recipe with { Region = other.Region }),
        ("make", (recipe, other) => recipe with { Make = other.Make }),
        ("pieces", (recipe, _) => recipe.Make is { } make ? recipe with { Make = make with { Pieces = make.Pieces + 1 } } : null),
        ("piece name", (recipe, _) => recipe.Make is { } make ? recipe with { Make = make with { What = "buns" } } : null),
        ("piece mass", (recipe, _) => recipe.Make is { } make ? recipe with { Make = make with { PieceMass = Mass.FromGrams(99) } } : null),
        ("home name", (recipe, _) => recipe with { Home = recipe.Home with { Name = "Another room" } }),
        ("air", (recipe, _) => recipe with { Home = recipe.Home with { Air = AirProfile.Constant(Temperature.FromCelsius(31.5)) } }),
        ("altitude", (recipe, _) => recipe with { Home = recipe.Home with { Altitude = Length.FromMetres(777) } }),
        ("tap", (recipe, _) => recipe with { Home = recipe.Home with { Tap = Temperature.FromCelsius(7.5) } }),
        ("fridge", (recipe, _) => recipe with { Home = recipe.Home with { Fridge = Temperature.FromCelsius(2.5) } }),
        ("oven", (recipe, _) => recipe with { Home = recipe.Home with { Oven = recipe.Home.Oven == OvenMode.Fan ? OvenMode.Static : OvenMode.Fan } }),
        ("oven traits", (recipe, _) => recipe with { Home = recipe.Home with { OvenTraits = recipe.Home.OvenTraits with { HeatsIn = Duration.FromMinutes(33) } } }),
        ("trays", (recipe, _) => recipe with { Home = recipe.Home with { Trays = recipe.Home.Trays + 1 } }),
        ("scale", (recipe, _) => recipe with { Home = recipe.Home with { Scale = Mass.FromGrams(5) } }),
        ("shelf", (recipe, _) => recipe with { Home = recipe.Home with { Ingredients = Temperature.FromCelsius(9.5) } }),
        ("proofing place", (recipe, _) => recipe with { Home = recipe.Home with { ProofingPlace = Temperature.FromCelsius(33.5) } }),
        ("tools", (recipe, _) => recipe with { Tools = [.. recipe.Tools ?? [], "a new whisk"] }),
        ("words", (recipe, _) => recipe with { Words = recipe.Words + "One more word." }),
        ("own", (recipe, other) => recipe with { Own = other.Own }),
        ("without", (recipe, other) => recipe with { Without = other.Without }),
        ("swaps", (recipe, other) => recipe with { Swaps = other.Swaps }),
        ("keeping", (recipe, other) => recipe with { Keeping = other.Keeping }),
        ("part new", (recipe, _) => recipe with { Components = [.. recipe.Components, new("new-part", "New part", ComponentKind.Wash, [NewLine], Position.None)] }),
        ("part name", (recipe, _) => Part(recipe, part => part with { Name = "Renamed" })),
        ("part kind", (recipe, _) => Part(recipe, part => part with { Kind = part.Kind == ComponentKind.Soaker ? ComponentKind.Scald : ComponentKind.Soaker })),
        ("part base", (recipe, _) => Part(recipe, part => part with { Base = part.Base is null ? part.Lines[0].Id : null })),
        ("parts turned", (recipe, _) => recipe.Components.Count > 1 ? recipe with { Components = [.. recipe.Components.Reverse()] } : null),
        ("line new", (recipe, _) => Part(recipe, part => part with { Lines = [.. part.Lines, NewLine] })),
        ("line gone", (recipe, _) => recipe.Components[0].Lines.Count > 1 ? Part(recipe, part => part with { Lines = [.. part.Lines.Skip(1)] }) : null),
        ("lines turned", (recipe, _) => recipe.Components[0].Lines.Count > 1 ? Part(recipe, part => part with { Lines = [.. part.Lines.Reverse()] }) : null),
        ("weight", (recipe, _) => Line(recipe, line => line.Mass is { } mass ? Weighing(line, mass.Grams + 1) : null)),
        ("all weights", (recipe, _) => recipe with { Components = [.. recipe.Components.Select(part => part with { Lines = [.. part.Lines.Select(line => line.Mass is { } mass ? Weighing(line, 2 * mass.Grams) : line)] })] }),
        ("conditions", (recipe, _) => Line(recipe, line => line with { Conditions = [.. line.Conditions, "sifted"] })),
        ("warmth", (recipe, _) => Line(recipe, line => line with { Warmth = LineWarmth.At(Temperature.FromCelsius(38.5)) })),
        ("counts as", (recipe, _) => Line(recipe, line => line with { CountsAs = line.CountsAs == "fat" ? "sugar" : "fat" })),
        ("step gone", (recipe, _) => recipe.Steps.Count > 0 ? recipe with { Steps = [.. recipe.Steps.Skip(1)] } : null),
        ("steps turned", (recipe, _) => recipe.Steps.Count > 1 ? recipe with { Steps = [.. recipe.Steps.Reverse()] } : null),
        ("step name", (recipe, _) => Step(recipe, step => step with { Name = "Do it otherwise" })),
        ("step kind", (recipe, _) => Step(recipe, step => step with { Kind = step.Kind == StepKind.Rest ? StepKind.Finish : StepKind.Rest })),
        ("hands", (recipe, _) => Step(recipe, step => step with { Hands = step.Hands + Duration.FromMinutes(1) })),
        ("end", (recipe, _) => Step(recipe, step => step with { End = new StepEnd.AfterTime(Duration.FromMinutes(1234)) })),
        ("end at", (recipe, _) => Step(recipe, step => step with { End = new StepEnd.AtGrowth(3.25) })),
        ("cue", (recipe, _) => Step(recipe, step => step with { Cue = "it sings" })),
        ("measured", (recipe, _) => Step(recipe, step => step with { Measured = new(Duration.FromMinutes(777), null, "12 May", 2) })),
        ("seen oftener", (recipe, _) => Step(recipe, step => step.Measured is { } measured ? step with { Measured = measured with { TimesSeen = measured.TimesSeen + 1 } } : null)),
        ("vessel", (recipe, _) => Step(recipe, step => step with { Vessel = new(VesselShape.Pot, VesselMaterial.Aluminium, Mass.FromGrams(777), false) })),
        ("cover", (recipe, _) => Step(recipe, step => step with { Cover = step.Cover == Cover.Cloth ? Cover.Covered : Cover.Cloth })),
        ("depth", (recipe, _) => Step(recipe, step => step with { Depth = Length.FromMillimetres(17.5) })),
        ("where", (recipe, _) => Step(recipe, step => step with { Where = step.Where == Where.Bath ? Where.Fridge : Where.Bath })),
        ("way", (recipe, _) => Step(recipe, step => step with { Way = step.Way == MixingWay.Machine ? MixingWay.ByHand : MixingWay.Machine })),
        ("folds", (recipe, _) => Step(recipe, step => step with { Folds = [.. step.Folds, new(Duration.FromMinutes(222), Duration.FromMinutes(2))] })),
        ("dial", (recipe, _) => Step(recipe, step => step with { Oven = (step.Oven ?? new(Temperature.FromCelsius(200), null)) with { Dial = Temperature.FromCelsius(222) } })),
        ("oven mode", (recipe, _) => Step(recipe, step => step.Oven is { } oven ? step with { Oven = oven with { Mode = oven.Mode == OvenMode.Deck ? null : OvenMode.Deck } } : null)),
        ("then", (recipe, _) => Step(recipe, step => step.Oven is { } oven ? step with { Oven = oven with { Then = new(Temperature.FromCelsius(177), Duration.FromMinutes(11)) } } : null)),
        ("trays of a step", (recipe, _) => Step(recipe, step => step with { Trays = (step.Trays ?? 0) + 1 })),
        ("tools of a step", (recipe, _) => Step(recipe, step => step with { Tools = [.. step.Tools, "a long spoon"] })),
        ("words of a step", (recipe, _) => Step(recipe, step => step with { Words = step.Words + "Once more." })),
        ("notes of a step", (recipe, _) => Step(recipe, step => step with { Learn = [.. step.Learn, "a new note"] })),
        ("photo laid", (recipe, _) => recipe with { Photos = [.. recipe.Photos, Crumb] }),
        ("photo gone", (recipe, _) => recipe.Photos.Count > 0 ? recipe with { Photos = [.. recipe.Photos.Skip(1)] } : null),
        ("photo of a step laid", (recipe, _) => Step(recipe, step => Showing(step, [.. step.Photos, Crumb]))),
        ("photo of a step gone", (recipe, _) => Shown(recipe, step => Showing(step, [.. step.Photos.Skip(1)]))),
        ("photo of a step said otherwise", (recipe, _) => Shown(recipe, step => Showing(step, [step.Photos[0] with { Words = "the crust" }, .. step.Photos.Skip(1)]))),
        ("other ways", (recipe, _) => Step(recipe, step => step.Variants.Count > 0 ? step with { Variants = [] } : null)),
    ];

    /// <summary>The first step that shows a photo, changed.</summary>
    private static Recipe? Shown(Recipe recipe, Func<Step, Step> change) =>
        recipe.Steps.FirstOrDefault(step => step.Photos.Count > 0) is { } shown ? recipe with { Steps = [.. recipe.Steps.Select(step => step == shown ? change(step) : step)] } : null;

    private static Photo Crumb => new("aaaabbbbccccdddd", "the crumb", Position.None);

    /// <summary>Another way of a step shows the photos of the step.</summary>
    private static Step Showing(Step step, IReadOnlyList<Photo> photos) =>
        step with { Photos = photos, Variants = [.. step.Variants.Select(variant => variant with { Step = variant.Step with { Photos = photos } })] };

    private static Line NewLine => new() { Id = "moonlight", Name = "moonlight", Mass = Mass.FromGrams(33), Typed = "33 g", Position = Position.None };

    private static Line Weighing(Line line, double grams) =>
        line with { Mass = Mass.FromGrams(grams), Typed = FormattableString.Invariant($"{grams:R} g"), Household = null };

    private static Recipe Part(Recipe recipe, Func<Component, Component> change) =>
        recipe with { Components = [change(recipe.Components[0]), .. recipe.Components.Skip(1)] };

    private static Recipe? Line(Recipe recipe, Func<Line, Line?> change) =>
        change(recipe.Components[0].Lines[0]) is { } line ? Part(recipe, part => part with { Lines = [line, .. part.Lines.Skip(1)] }) : null;

    private static Recipe? Step(Recipe recipe, Func<Step, Step?> change) =>
        recipe.Steps.Count > 0 && change(recipe.Steps[0]) is { } step ? recipe with { Steps = [step, .. recipe.Steps.Skip(1)] } : null;
}

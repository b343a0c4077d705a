using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals;

/// <summary>
/// A recipe without the values that no kitchen has. Each of them is told as an error where the recipe is read, and the run does without it:
/// what hangs on it is then not told, instead of being computed from nonsense.
/// </summary>
internal static class Believable
{
    public static Recipe Of(Recipe recipe)
    {
        var home = Of(recipe.Home);
        return recipe.Steps.All(step => Of(step) == step) && home == recipe.Home
            ? recipe
            : recipe with { Steps = [.. recipe.Steps.Select(Of)], Home = home };
    }

    /// <summary>How warm a line goes in, where anything in a kitchen can be so warm; else as the room.</summary>
    public static LineWarmth Of(LineWarmth warmth) => warmth.Stated is { } stated && !Limits.Matter.Holds(stated) ? LineWarmth.AsTheRoom : warmth;

    /// <summary>What is so cold or hot that no model of matter holds gives way to what is usual.</summary>
    public static Kitchen Of(Kitchen home)
    {
        var usual = new Kitchen { Air = AirProfile.Constant(UsualAir) };
        return home with
        {
            Air = home.Air.Knots.All(knot => Limits.Matter.Holds(knot.Air)) ? home.Air : usual.Air,
            Tap = Kept(home.Tap, Limits.Matter) ?? usual.Tap,
            Fridge = Kept(home.Fridge, Limits.Matter) ?? usual.Fridge,
            Ingredients = Kept(home.Ingredients, Limits.Matter),
            ProofingPlace = Kept(home.ProofingPlace, Limits.Matter),
            OvenTraits = Of(home.OvenTraits),
        };
    }

    private static OvenTraits Of(OvenTraits oven) => oven with
    {
        OffDial = Kept(oven.OffDial, Limits.OffDial),
        HeatsIn = Kept(oven.HeatsIn, Limits.OvenHeats),
        RecoversIn = Kept(oven.RecoversIn, Limits.OvenRecovers),
        Hearth = oven.Hearth is { Thick: { } thick } && !Limits.Hearth.Holds(thick) ? oven.Hearth with { Thick = null } : oven.Hearth,
    };

    private static Step Of(Step step)
    {
        var time = Kept(step.Measured?.Time, Limits.Step);
        var temperature = step.Kind switch
        {
            StepKind.Bake => Kept(step.Measured?.Temperature, Limits.Core),
            StepKind.Mix => Kept(step.Measured?.Temperature, Limits.Mixed),
            _ => Kept(step.Measured?.Temperature, Limits.Matter),
        };
        var measured = step.Measured is null || (time is null && temperature is null) ? null : step.Measured with { Time = time, Temperature = temperature };
        return step with
        {
            Hands = Kept<Duration>(step.Hands, Limits.Hands) ?? Duration.Zero,
            Folds = step.Folds.All(Holds) ? step.Folds : [.. step.Folds.Where(Holds)],
            Measured = measured,
            End = Of(step.End),
            Depth = Kept(step.Depth, Limits.Depth),
            Oven = step.Oven is { Then: { } then } oven && !(Limits.Oven.Holds(then.Dial) && Limits.WithinBake.Holds(then.After)) ? oven with { Then = null } : step.Oven,
            Steam = Kept(step.Steam, Limits.WithinBake),
            LidOff = Kept(step.LidOff, Limits.WithinBake),
            Variants = step.Variants.All(variant => Of(variant.Step) == variant.Step)
                ? step.Variants
                : [.. step.Variants.Select(variant => variant with { Step = Of(variant.Step) })],
        };
    }

    private static bool Holds(Fold fold) => Limits.Hands.Holds(fold.After) && Limits.Hands.Holds(fold.Hands);

    private static StepEnd? Of(StepEnd? end) => end switch
    {
        StepEnd.AfterTime after => Limits.Step.Holds(after.Time) ? end : null,
        StepEnd.ByCue cue => Limits.Step.Holds(cue.Estimate) ? end : null,
        StepEnd.WhenRipe { About: { } about } => Limits.Step.Holds(about) ? end : new StepEnd.WhenRipe(null),
        StepEnd.AtGrowth growth => Limits.Growth.Holds(growth.Times) ? end : null,
        StepEnd.AtTemperature at => Limits.Matter.Holds(at.Temperature) ? end : null,
        StepEnd.AtCore core => Limits.Core.Holds(core.Temperature) ? end : null,
        _ => end,
    };

    private static readonly Temperature UsualAir = Temperature.FromCelsius(21);

    private static T? Kept<T>(T? value, Limit<T> limit) where T : struct, IComparable<T> =>
        value is { } told && limit.Holds(told) ? told : null;
}

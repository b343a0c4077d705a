using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Remedies;

/// <summary>Steps in the wrong place or with times that do not fit, and matter that stands too warm.</summary>
internal static class StepRemedies
{
    private static readonly TemperatureDelta MostOfABowl = TemperatureDelta.FromKelvins(10);
    private static readonly Duration HandsOfShaping = Duration.FromMinutes(10);

    public static IEnumerable<KeyValuePair<string, Func<Found, IEnumerable<Remedy>>>> All =>
    [
        new("order-of-steps", BelowTheMix),
        new("part-used-before-made", AboveTheMix),
        new("nothing-divides", Shape),
        new("hands-longer-than-step", Hands),
        new("fold-after-end", Fold),
        new("order-leaves-out", Order),
        new("scald-too-cool", Warm),
        new("perishable-left-out", Fridge),
        new("dairy-out-too-long", Fridge),
        new("filling-not-cooled", Cooling),
        new("warm-for-long", Fridge),
        new("warm-for-too-long", Fridge),
        new("stays-warm", Fridge),
        new("never-ends-here", Fridge),
        new("never-ends-here-but-in-fridge", Fridge),
    ];

    private static IEnumerable<Remedy> BelowTheMix(Found found)
    {
        if (found.Step is not { } step || found.Recipe.Steps.FirstOrDefault(mix => mix.Kind == StepKind.Mix && mix.Component == step.Component) is not { } mix)
        {
            yield break;
        }

        // The mix goes above the first step that needs its dough, so the order of all the rest stays.
        yield return found.Remedy(
            Verbs.MoveStepAbove, recipe => recipe.Move(other => other.Id == mix.Id, step.Id), ("step", mix.Name), ("above", step.Name));
    }

    private static IEnumerable<Remedy> AboveTheMix(Found found)
    {
        if (found.Step is { } mix && found.Recipe.FindComponent(mix.Component) is { } dough
            && dough.Lines.Select(line => line.Uses).OfType<string>().FirstOrDefault(used => IsBelow(found.Recipe, used, mix)) is { } part)
        {
            yield return found.Remedy(
                Verbs.MovePartAbove,
                recipe => recipe.Move(other => other.Component == part, mix.Id),
                ("part", found.Recipe.FindComponent(part)?.Name ?? part),
                ("above", mix.Name));
        }
    }

    private static bool IsBelow(Recipe recipe, string part, Step mix) =>
        recipe.Steps.Any(step => step.Component == part) && !recipe.Steps.TakeWhile(step => step.Id != mix.Id).Any(step => step.Component == part);

    private static IEnumerable<Remedy> Shape(Found found)
    {
        if (found.Step is not { } step)
        {
            yield break;
        }

        yield return found.Remedy(Verbs.AddShape, recipe => recipe.Insert(IndexOf(recipe, step.Id), NewShape(recipe, step)), ("before", step.Name));
    }

    private static Step NewShape(Recipe recipe, Step before)
    {
        var id = recipe.FreeStepId("shape");
        return new()
        {
            Id = id,
            Name = Slug.InWords(id),
            Kind = StepKind.Shape,
            Component = before.Component,
            Hands = HandsOfShaping,
            Position = Position.None,
        };
    }

    private static int IndexOf(Recipe recipe, string id) => recipe.Steps.TakeWhile(step => step.Id != id).Count();

    private static IEnumerable<Remedy> Hands(Found found)
    {
        if (found.Step is { } step && found.Value<Duration>("time") is { } time)
        {
            yield return found.Remedy(Verbs.WriteHands, recipe => recipe.Step(step.Id, old => old with { Hands = time }), ("time", time), ("step", step.Name));
        }
    }

    private static IEnumerable<Remedy> Fold(Found found)
    {
        if (found.Step is { } step && found.Value<Duration>("time") is { } time && found.Value<Duration>("fold") is { } fold)
        {
            yield return found.Remedy(
                Verbs.DropFold,
                recipe => recipe.Step(step.Id, old => old with { Folds = [.. old.Folds.Where(each => each.After < time)] }),
                ("fold", fold),
                ("step", step.Name));
        }
    }

    /// <summary>What the order leaves out goes in last.</summary>
    private static IEnumerable<Remedy> Order(Found found)
    {
        if (found.Step is { } step && found.Word("lines")?.Split(", ") is { } lines)
        {
            yield return found.Remedy(
                Verbs.AppendToOrder,
                recipe => recipe.Step(step.Id, old => old.Ordered(order => [.. order, .. lines.Except(order)])),
                ("lines", string.Join(", ", lines)),
                ("step", step.Name));
        }
    }

    private static IEnumerable<Remedy> Warm(Found found)
    {
        // A warm bowl gives back what a cold one takes; it does not boil the water.
        if (found.Step is { Vessel: { IsNone: false, Warmed: false } vessel } step
            && found.Value<Temperature>("celsius") is { } comes && found.Value<Temperature>("swells") is { } swells && comes + MostOfABowl >= swells)
        {
            yield return found.Remedy(
                Verbs.WarmBowl, recipe => recipe.Step(step.Id, old => old with { Vessel = vessel with { Warmed = true } }), ("step", step.Name));
        }
    }

    /// <summary>It cools in what it was cooked in; the author may spread it thin.</summary>
    private static IEnumerable<Remedy> Cooling(Found found)
    {
        if (found.Step is { } step && found.Value<Temperature>("limit") is { } limit)
        {
            yield return found.Remedy(Verbs.AddCooling, recipe => recipe.Insert(IndexOf(recipe, step.Id) + 1, NewCooling(recipe, step, limit)), ("after", step.Name), ("limit", limit));
        }
    }

    private static Step NewCooling(Recipe recipe, Step after, Temperature limit)
    {
        var id = recipe.FreeStepId("cool");
        return new()
        {
            Id = id,
            Name = Slug.InWords(id),
            Kind = StepKind.Cool,
            Component = after.Component,
            Vessel = after.Vessel,
            End = new StepEnd.AtTemperature(limit),
            Position = Position.None,
        };
    }

    /// <summary>
    /// Only where it stands and waits: nobody pours or kneads in a fridge. A time that was measured in the room is not the time in the fridge.
    /// </summary>
    private static IEnumerable<Remedy> Fridge(Found found)
    {
        if (found.Step is { Where: not Where.Fridge, Kind: StepKind.Cool or StepKind.Rest or StepKind.Bulk or StepKind.Proof } step)
        {
            yield return found.Remedy(
                Verbs.PutInFridge,
                recipe => recipe.Step(step.Id, old => old with
                {
                    Where = Where.Fridge,
                    Measured = old.Measured is { Temperature: not null } seen ? seen with { Time = null } : null,
                }),
                ("step", step.Name));
        }
    }
}

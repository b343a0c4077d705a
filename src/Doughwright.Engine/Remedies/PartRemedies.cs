using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Remedies;

/// <summary>Parts that nothing uses, that are left over or run short, and what the dough is divided into.</summary>
internal static class PartRemedies
{
    private const double ToTheTenth = 10;
    private static readonly Duration HandsOfBrushing = Duration.FromMinutes(3);

    public static IEnumerable<KeyValuePair<string, Func<Found, IEnumerable<Remedy>>>> All =>
    [
        new("component-not-used", NotUsed),
        new("component-left-over", AllOfIt),
        new("component-too-small", TooSmall),
        new("component-without-step", WithoutStep),
        new("raw-egg-eaten", BeforeTheBake),
        new("raw-flour-eaten", BeforeTheBake),
        new("make-differs", Make),
    ];

    private static IEnumerable<Remedy> NotUsed(Found found)
    {
        if (found.Part is not { } part)
        {
            yield break;
        }

        if (found.FinalDough is { } dough && dough.Id != part.Id)
        {
            yield return found.Remedy(
                Verbs.UseAll, recipe => recipe.AddLine(dough.Id, Remake.AllOf(part.Id)), ("part", part.Name), ("where", dough.Name));
        }

        yield return found.Remedy(Verbs.DropPart, recipe => recipe.DropPart(part.Id), ("part", part.Name));
    }

    private static IEnumerable<Remedy> AllOfIt(Found found)
    {
        if (found.Part is { } part && Uses(found.Recipe, part.Id) is [var only])
        {
            yield return found.Remedy(
                Verbs.UseAll,
                recipe => recipe.Line(only.Part.Id, only.Line.Id, line => line with { Mass = null, Typed = LineGrammar.AllOfIt, Household = null }),
                ("part", part.Name),
                ("where", only.Part.Name));
        }
    }

    private static IEnumerable<Remedy> TooSmall(Found found)
    {
        foreach (var remedy in AllOfIt(found))
        {
            yield return remedy;
        }

        // More of every line, so that what is used is there; the part keeps its proportions.
        if (found.Part is { } part && found.Value<Mass>("made") is { Grams: > 0 } made && found.Value<Mass>("used") is { } used
            && Uses(found.Recipe, part.Id).All(use => use.Line.Mass is not null))
        {
            var factor = used / made;
            yield return found.Remedy(
                Verbs.MakeMore,
                recipe => recipe.Part(part.Id, old => old with { Lines = [.. old.Lines.Select(line => line.Mass is { } mass ? line.Weighing(mass * factor) : line)] }),
                ("part", part.Name),
                ("mass", used));
        }

        // All of it in two places cannot be: each may lose it.
        if (found.Part is { } shared && Uses(found.Recipe, shared.Id) is { Count: > 1 } uses)
        {
            foreach (var (user, line) in uses)
            {
                yield return found.Remedy(
                    Verbs.TakeOutOf,
                    recipe => recipe.DropLine(user.Id, line.Id),
                    ("part", shared.Name),
                    ("where", user.Name));
            }
        }
    }

    private static IReadOnlyList<(Component Part, Line Line)> Uses(Recipe recipe, string part) =>
        [.. recipe.Components.SelectMany(user => user.Lines.Where(line => line.Uses == part).Select(line => (user, line)))];

    /// <summary>A wash goes on before the bake, everything else when the bread is done.</summary>
    private static IEnumerable<Remedy> WithoutStep(Found found)
    {
        if (found.Part is not { } part)
        {
            yield break;
        }

        var bake = found.Recipe.Steps.FirstOrDefault(step => step.Kind == StepKind.Bake);
        var before = part.Kind is ComponentKind.Wash or ComponentKind.Topping or ComponentKind.Filling ? bake : null;
        yield return found.Remedy(
            before is null ? Verbs.AddStepAtEnd : Verbs.AddStepBefore,
            recipe => recipe.Insert(before is null ? recipe.Steps.Count : recipe.Steps.TakeWhile(step => step.Id != before.Id).Count(), NewStep(recipe, part)),
            ("part", part.Name),
            ("before", before?.Name ?? ""));
    }

    private static Step NewStep(Recipe recipe, Component part)
    {
        var id = recipe.FreeStepId(part.Id);
        return new()
        {
            Id = id,
            Name = Slug.InWords(id),
            Kind = part.Kind is ComponentKind.Filling or ComponentKind.Topping ? StepKind.Finish : StepKind.Glaze,
            Component = part.Id,
            Hands = HandsOfBrushing,
            Position = Position.None,
        };
    }

    /// <summary>What goes on raw after the last heat goes on before the bake instead.</summary>
    private static IEnumerable<Remedy> BeforeTheBake(Found found)
    {
        if (found.Part is { } part && found.Recipe.Steps.LastOrDefault(step => step.Kind == StepKind.Bake) is { } bake)
        {
            yield return found.Remedy(
                Verbs.MovePartAbove,
                recipe => recipe.Move(step => step.Component == part.Id && recipe.Steps.SkipWhile(other => other.Id != bake.Id).Contains(step), bake.Id),
                ("part", part.Name),
                ("above", bake.Name));
        }
    }

    private static IEnumerable<Remedy> Make(Found found)
    {
        if (found.Recipe.Make is not { } make || found.Value<Mass>("dough") is not { } dough)
        {
            yield break;
        }

        var each = Mass.FromGrams(Math.Round(dough.Grams / make.Pieces * ToTheTenth) / ToTheTenth);
        if (Limits.Piece.Holds(each))
        {
            yield return found.Remedy(Verbs.WritePiece, recipe => recipe with { Make = make with { PieceMass = each } }, ("mass", each));
        }

        var pieces = Math.Round(dough / make.PieceMass);
        if (pieces >= 1 && pieces <= Limits.Pieces.High && (int)pieces != make.Pieces && Math.Abs((dough / (make.PieceMass * pieces)) - 1) < 0.02)
        {
            yield return found.Remedy(
                Verbs.WritePieces, recipe => recipe with { Make = make.With((int)pieces) }, ("pieces", (int)pieces), ("what", make.With((int)pieces).What));
        }
    }
}

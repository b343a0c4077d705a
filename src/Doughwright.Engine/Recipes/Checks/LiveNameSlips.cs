using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes.Live;

namespace Doughwright.Engine.Recipes.Checks;

/// <summary>Words in brackets that name nothing and nearly name something. All other brackets are the author's own and stay as they are.</summary>
internal static class LiveNameSlips
{
    public static IEnumerable<Finding> Check(Recipe recipe) =>
        from prose in ProseOf(recipe)
        from name in ProsePiece.Of(prose.Words).Select(piece => piece.Name).OfType<string>().Distinct()
        where LiveNames.Find(recipe, name, prose.Step) is null
        let near = LiveNameNear.Of(name, [.. LiveNames.All(recipe, prose.Step).Select(known => known.Words).Distinct()])
        where near is not null
        select new Finding
        {
            Kind = "live-value-nearly",
            Grade = Grade.Hint,
            Place = prose.Place,
            Position = prose.Position,
            Arguments = new Dictionary<string, object> { ["name"] = name, ["nearest"] = near },
        };

    private static IEnumerable<(string Words, string? Step, string Place, Position Position)> ProseOf(Recipe recipe)
    {
        if (recipe.Words is { } lead)
        {
            yield return (lead, null, "words", Position.None);
        }

        foreach (var step in recipe.Steps)
        {
            // A variant that says no words of its own has those of its step.
            foreach (var words in step.Variants.Select(variant => variant.Step).Prepend(step).SelectMany(one => new[] { one.Words, one.Cue }).OfType<string>().Distinct())
            {
                yield return (words, step.Id, $"steps.{step.Id}", step.Position);
            }
        }

        foreach (var without in recipe.Without)
        {
            yield return (without.Words, null, $"without.{Slug.Of(without.What)}", without.Position);
        }

        foreach (var swap in recipe.Swaps.Where(swap => swap.Words is not null))
        {
            yield return (swap.Words!, null, "swaps", swap.Position);
        }
    }
}

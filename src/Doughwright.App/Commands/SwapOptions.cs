using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.App.Commands;

/// <summary>What is to be swapped, as typed: "butter=olive oil", "butter@filling=lard", "egg=" to leave it out.</summary>
internal static class SwapOptions
{
    public static IReadOnlyList<Wish> Read(Given given, Options options, Recipe recipe)
    {
        var wishes = new List<Wish>();
        foreach (var typed in given.All(options.Replace))
        {
            if (Wish(typed) is not { } wish)
            {
                given.Faults.Add("swap-option-wanted", ("option", options.Replace.Name), ("given", typed), ("example", given.Example(options.Replace)));
            }
            else if (IsThere(given, options, recipe, wish))
            {
                wishes.Add(wish);
            }
        }

        return wishes;
    }

    /// <summary>Null when it does not say what by what.</summary>
    public static Wish? Wish(string typed)
    {
        var sign = typed.IndexOf('=');
        if (sign < 0)
        {
            return null;
        }

        var what = typed[..sign];
        var at = what.LastIndexOf('@');
        var part = at < 0 ? null : what[(at + 1)..].Trim();
        var name = (at < 0 ? what : what[..at]).Trim();
        return name.Length == 0 || part is { Length: 0 } ? null : new(name, typed[(sign + 1)..].Trim(), part);
    }

    private static bool IsThere(Given given, Options options, Recipe recipe, Wish wish)
    {
        var parts = recipe.Components.Where(part => wish.Part is null || part.Id == Slug.Of(wish.Part) || Slug.Of(part.Name) == Slug.Of(wish.Part)).ToArray();
        if (parts.Length == 0)
        {
            given.Faults.AddUnknown("swap-part-unknown", wish.Part!, [.. recipe.Components.Select(part => part.Id)], ("option", options.Replace.Name));
            return false;
        }

        if (Swapping.LinesFor(recipe, wish, Larder.Shipped).Count > 0)
        {
            return true;
        }

        var names = parts.SelectMany(part => part.Lines).Where(line => line.Uses is null).Select(line => line.Name).Distinct();
        given.Faults.AddUnknown("swap-line-unknown", wish.What, [.. names], ("option", options.Replace.Name));
        return false;
    }
}

using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Editing;

/// <summary>What may be meant by a line that is being typed, and what it would bring. It offers; the author takes.</summary>
public static class LineOffers
{
    private const string Comma = ", ";

    /// <summary>Lines like what is typed, the likest first: parts of the recipe, then the larder.</summary>
    /// <param name="part">Id of the part that the line is to go into.</param>
    /// <param name="typed">As far as it is typed: "30 g sunf", "butter 50 g", "sca".</param>
    /// <param name="most">Number of lines, at least 1.</param>
    /// <returns>None where nothing of a name is typed, or nothing is like it.</returns>
    public static IReadOnlyList<LineOffer> For(Recipe recipe, string part, string typed, int most = 6)
    {
        var asked = Asked.Of(typed, recipe);
        if (asked.Name.Length == 0 || recipe.FindComponent(part) is not { } target)
        {
            return [];
        }

        var larder = recipe.LarderOver(Larder.Shipped);
        var parts = Parts(recipe, target, asked);
        return
        [
            .. parts.Concat(larder.Complete(asked.Name, most).Select(hit => Offer(hit, larder, asked)).OfType<LineOffer>())
                .DistinctBy(offer => Slug.Of(offer.Name + offer.Typed))
                .Take(most)
                .Select(offer => Tried(recipe, target, offer, asked)),
        ];
    }

    /// <summary>The name in what is typed of a line, without its amount and conditions; empty where none is typed yet.</summary>
    public static string NameIn(Recipe recipe, string typed) => Asked.Of(typed, recipe).Name;

    /// <summary>Whether a line is called by what is typed, so that there is nothing to choose.</summary>
    public static bool IsNamed(Recipe recipe, string typed, LineOffer offer) => Slug.Of(Asked.Of(typed, recipe).Name) == Slug.Of(offer.Name);

    /// <summary>Whether what is typed can be added as it stands, whatever the larder makes of its name.</summary>
    public static bool CanStand(Recipe recipe, string part, string typed) => LineEdits.Add(recipe, part, typed) is EditAnswer.Done;

    private static IEnumerable<LineOffer> Parts(Recipe recipe, Component target, Asked asked)
    {
        var begin = Slug.Of(asked.Name);
        return from other in recipe.Components
               where other.Id != target.Id && !Uses(recipe, other.Id, target.Id) && (Begins(other.Id, begin) || Begins(Slug.Of(other.Name), begin))
               let name = other.Id.Replace('-', ' ')
               select new LineOffer(name, asked.With(name)) { Part = other.Id };
    }

    private static bool Begins(string slug, string begin) => begin.Length > 0 && (slug.StartsWith(begin, StringComparison.Ordinal) || slug.Contains("-" + begin, StringComparison.Ordinal));

    /// <summary>A part that goes into another cannot hold it.</summary>
    private static bool Uses(Recipe recipe, string part, string other) => Reached(recipe, part, []).Contains(other);

    private static HashSet<string> Reached(Recipe recipe, string part, HashSet<string> seen)
    {
        if (seen.Add(part))
        {
            foreach (var next in recipe.FindComponent(part)?.Lines.Select(line => line.Uses).OfType<string>() ?? [])
            {
                Reached(recipe, next, seen);
            }
        }

        return seen;
    }

    /// <summary>The row by a name that means it and nothing else; null when it has none.</summary>
    private static LineOffer? Offer(LarderHit hit, Larder larder, Asked asked)
    {
        (string Name, string[] When)[] names = [(hit.Name, []), .. hit.When.Select(when => (hit.Name, new[] { when })), (hit.Ingredient.Name, [])];
        foreach (var (name, when) in names)
        {
            if (larder.Find(name, when) is { Ingredient: { } row } && row.Id == hit.Ingredient.Id)
            {
                return new(name, asked.With(name, when)) { Ingredient = row };
            }
        }

        return null;
    }

    private static LineOffer Tried(Recipe recipe, Component target, LineOffer offer, Asked asked)
    {
        if (target.Lines.FirstOrDefault(line => line.Id == Slug.Of(offer.Name)) is { } there)
        {
            return offer with { IsThere = true, Line = Formula.Balance(recipe, Larder.Shipped).FindComponent(target.Id)?.Lines.FirstOrDefault(line => line.Id == there.Id) };
        }

        return (asked.Amount is not null || offer.Part is not null) && LineEdits.Add(recipe, target.Id, offer.Typed) is EditAnswer.Done done
            ? offer with { Line = Formula.Balance(done.Recipe, Larder.Shipped).FindComponent(target.Id)?.Lines[^1] }
            : offer;
    }

    /// <summary>What is typed of a line.</summary>
    /// <param name="Amount">Null as long as none is typed.</param>
    /// <param name="IsAmountFirst">Whether it stands before the name.</param>
    /// <param name="Rest">Behind the first comma, with it.</param>
    private sealed record Asked(string Name, string? Amount, bool IsAmountFirst, string Rest)
    {
        public static Asked Of(string typed, Recipe recipe)
        {
            var words = TypedLine.Tidy(typed);
            var comma = words.IndexOf(Comma, StringComparison.Ordinal);
            var (first, rest) = comma < 0 ? (words.TrimEnd(','), "") : (words[..comma], words[comma..]);
            if (recipe.FindComponent(Slug.Of(first)) is not null || TypedLine.Split(first, recipe) is not var (name, amount))
            {
                return new(TypedLine.IsAmount(first) ? "" : first, null, false, rest);
            }

            return new(name, amount, !first.StartsWith(name, StringComparison.Ordinal), rest);
        }

        public string With(string name, params string[] when)
        {
            var rest = string.Join("", when.Select(condition => Comma + condition)) + Rest;
            // A comma in a name would end it.
            return Amount is null ? (name.Contains(',') ? name + ": " : name + rest)
                : name.Contains(',') ? $"{name}: {Amount}{rest}"
                : IsAmountFirst ? $"{Amount} {name}{rest}" : $"{name} {Amount}{rest}";
        }
    }
}

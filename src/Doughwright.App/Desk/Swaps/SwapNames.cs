using Doughwright.Engine.Formulas;
using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Ingredients;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Swaps;

/// <summary>What the larder has near a name that it does not know, or that means several things: each one link away.</summary>
public sealed record SwapNames(string Said, IReadOnlyList<SwapName> Near)
{
    private const int MostNear = 6;
    private const double LeastLike = 0.3;

    internal static IReadOnlyList<SwapNames> Of(IReadOnlyList<Wish> wishes, Formula formula, Func<int, string, string> with, Voice voice) =>
    [
        .. wishes.Select((wish, index) => (wish, index)).Where(each => !each.wish.IsWithout)
            .Select(each => Of(each.wish, formula.Larder, name => with(each.index, name), voice))
            .OfType<SwapNames>(),
    ];

    private static SwapNames? Of(Wish wish, Larder larder, Func<string, string> with, Voice voice)
    {
        var pieces = wish.By.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var found = pieces.Length == 0 ? null : larder.Find(pieces[0], pieces[1..]);
        if (found is null or { Ingredient: not null })
        {
            return null;
        }

        var rows = found.Candidates.Count > 0 ? found.Candidates.Select(row => row.Name) : larder.Search(pieces[0]).Where(hit => hit.Likeness >= LeastLike).Select(hit => hit.Name);
        var near = rows.Distinct().Where(name => larder.Find(name, []).Ingredient is not null).Take(MostNear)
            .Select(name => new SwapName(voice.Say("swaps.take-this", ("name", name)), with(name)))
            .ToArray();
        return near.Length == 0 ? null : new(voice.Say(found.Candidates.Count > 0 ? "swaps.can-mean" : "swaps.near", ("by", wish.By)), near);
    }
}

/// <summary>A link that takes a name.</summary>
public sealed record SwapName(string Verb, string Address);

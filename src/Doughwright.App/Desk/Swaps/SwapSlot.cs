using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Swaps;

/// <summary>One sentence of the form: what is missing, what stands in, and where.</summary>
/// <param name="Whats">The lines of the recipe, grouped by part. A name that stands in several is there once, with all of them: in which it is swapped is chosen beside it.</param>
/// <param name="By">As it was typed; empty to leave it out.</param>
/// <param name="IsEmpty">Whether nothing is chosen in it yet.</param>
public sealed record SwapSlot(IReadOnlyList<SwapGroup> Whats, string By, IReadOnlyList<SwapPick> Parts, bool IsEmpty)
{
    // A name with one of these in it would be read as something else.
    private static readonly char[] Signs = ['=', '@'];

    /// <summary>What is chosen, by name.</summary>
    public string Chosen => Whats.SelectMany(group => group.Picks).FirstOrDefault(pick => pick.IsChosen)?.Name ?? "";

    private static List<SwapGroup> Groups(Recipe recipe, IReadOnlyList<(string Part, string Line)> meant, Voice voice)
    {
        bool IsMeant((Component Part, Line Line) each) => meant.Count > 0 && meant[0] == (each.Part.Id, each.Line.Id);
        var names = recipe.Components.SelectMany(part => part.Lines.Where(line => line.Uses is null).Select(line => (Part: part, Line: line))).GroupBy(each => ValueOf(each.Line)).ToArray();
        var several = names.Where(each => each.Count() > 1).Select(each => new SwapPick(
            each.Key,
            voice.Say("swaps.name-in-parts", ("name", each.First().Line.Name), ("parts", each.Select(one => one.Part.Name).Distinct().ToArray())),
            each.Any(IsMeant)));
        var single = names.Where(each => each.Count() == 1).Select(each => each.Single()).ToArray();
        return
        [
            .. new[] { new SwapGroup(voice.Words["swaps.several-parts"], [.. several]) }
                .Concat(recipe.Components.Select(part => new SwapGroup(
                    part.Name, [.. single.Where(each => each.Part == part).Select(each => new SwapPick(ValueOf(each.Line), each.Line.Name, IsMeant(each)))])))
                .Where(group => group.Picks.Count > 0),
        ];
    }

    private static string ValueOf(Line line) => line.Name.IndexOfAny(Signs) < 0 ? line.Name : line.Id;

    internal static SwapSlot Of(Wish wish, Recipe recipe, Voice voice)
    {
        var meant = wish.What.Length == 0 ? [] : Swapping.LinesFor(recipe, wish, Larder.Shipped);
        var groups = Groups(recipe, meant, voice);
        if (wish.What.Length == 0)
        {
            groups.Insert(0, new("", [new("", voice.Words["swaps.choose"], true)]));
        }
        else if (meant.Count == 0)
        {
            // What is refused stands where it was typed.
            groups.Insert(0, new("", [new(wish.What, wish.What, true)]));
        }

        var asked = wish.Part is { } part ? Slug.Of(part) : null;
        SwapPick[] parts =
        [
            new("", voice.Words["swaps.every-part"], wish.Part is null),
            .. recipe.Components
                .Where(each => each.Lines.Any(line => line.Uses is null))
                .Select(each => new SwapPick(each.Id, each.Name, asked is not null && (each.Id == asked || Slug.Of(each.Name) == asked))),
        ];
        return new(groups, wish.By, wish.Part is { } unknown && !parts.Any(each => each.IsChosen) ? [new(unknown, unknown, true), .. parts] : parts, wish.What.Length == 0);
    }
}

/// <summary>Lines of one part; without a name where they stand outside all parts.</summary>
public sealed record SwapGroup(string Part, IReadOnlyList<SwapPick> Picks);

/// <summary>What can be chosen.</summary>
public sealed record SwapPick(string Value, string Name, bool IsChosen);

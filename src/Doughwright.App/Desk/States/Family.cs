using System.Text;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Text.Sides;
using Doughwright.Book.Papers;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Sides;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.States;

/// <summary>What a recipe was grown from, and what has grown from it: each offshoot with what it differs by, and what it waits for.</summary>
internal sealed class Family(ShelfFolder shelf, StateDays days, Voice voice)
{
    /// <summary>Differences that a sentence can hold.</summary>
    private const int MostTold = 4;

    /// <summary>What the recipe was grown from; null where it was not, or that is not understood.</summary>
    public FamilyMember? BaseOf(Paper paper) => paper.GrownFrom is { } state ? Of(paper, state, isBase: true) : null;

    /// <summary>The base first, then the offshoots.</summary>
    public IReadOnlyList<FamilyMember> All(Paper paper) => [.. BaseOf(paper) is { } grownFrom ? [grownFrom] : Array.Empty<FamilyMember>(), .. OffshootsOf(paper)];

    /// <summary>What has grown from it, from whichever of its states.</summary>
    public IReadOnlyList<FamilyMember> OffshootsOf(Paper paper)
    {
        var states = shelf.Book.Papers.States(PaperSort.Recipe, paper.Name).Select(state => state.Id).ToHashSet();
        return [.. shelf.RecipeTexts.Papers().Where(other => other.GrownFrom is { } from && states.Contains(from)).Select(other => Of(other, other.GrownFrom!.Value, isBase: false)).OfType<FamilyMember>()];
    }

    private FamilyMember? Of(Paper offshoot, long grownFrom, bool isBase)
    {
        var papers = shelf.Book.Papers;
        if (papers.PaperOf(grownFrom) is not { } name
            || Read(papers.TextOf(grownFrom)) is not { } then
            || Read(papers.TextOf(offshoot.State)) is not { } grown
            || papers.States(PaperSort.Recipe, name).FirstOrDefault(state => state.Id == grownFrom) is not { } from)
        {
            return null;
        }

        var now = shelf.RecipeTexts.Find(name) is { } paper ? Read(papers.TextOf(paper.State)) : null;
        var (shown, address) = isBase ? (then.Title, name) : (grown.Title, offshoot.Name);
        return new(
            shown,
            $"/recipes/{Uri.EscapeDataString(address)}",
            $"/recipes/{Uri.EscapeDataString(offshoot.Name)}/sides?left={Uri.EscapeDataString(BookAddress.StateOf(name, grownFrom))}",
            voice.Say(isBase ? "family.from" : "family.offshoot", ("title", then.Title), ("day", days.Day(from.At))),
            But(then, grown),
            now is null ? voice.Words["family.base-gone"] : Waiting(then, now, grown))
        {
            GrownFrom = isBase ? null : grownFrom,
            Most = Untitled(then, grown) is [var first, ..] ? Told(then, grown, [first], Valued) : "",
        };
    }

    /// <summary>"As the base, but ...".</summary>
    private string But(Recipe then, Recipe grown)
    {
        var differences = Untitled(then, grown);
        return differences.Count == 0 ? voice.Words["family.as-the-base"] : voice.Say("family.but", ("differences", Told(then, grown, differences, Valued)));
    }

    /// <summary>What the base has changed since, that the offshoot does not have yet; and whether it was baked since it grew.</summary>
    private string Waiting(Recipe then, Recipe now, Recipe grown)
    {
        var missing = Untitled(then, now).Where(change => Untitled(grown, now).Any(change.IsAboutSame)).ToList();
        var baked = voice.Words[TestedSide.IsMeasuredAnew(then, grown) ? "family.baked" : "family.not-baked"];
        return missing.Count == 0
            ? voice.Say("family.follows", ("baked", baked))
            : voice.Say("family.waits", ("count", missing.Count), ("changes", Told(then, now, missing, Valued)), ("baked", baked));
    }

    private string Valued(SideRow row, string key) => voice.Say(key, ("what", row.What), ("value", row.Second.Text));

    private string Told(Recipe first, Recipe second, IReadOnlyList<RecipeDifference> differences, Func<SideRow, string, string> say)
    {
        var told = new SideWords(first, second, voice).Rows(differences.Take(MostTold)).Select(row => say(row, row.Difference.Second is null ? "family.gone" : "family.value"));
        return voice.List(differences.Count > MostTold ? [.. told, voice.Say("family.more", ("count", differences.Count - MostTold))] : told);
    }

    /// <summary>An offshoot has a title of its own as a matter of course.</summary>
    private static IReadOnlyList<RecipeDifference> Untitled(Recipe first, Recipe second) =>
        [.. RecipeDifferences.Between(first, second, Larder.Shipped).Where(difference => difference.Aspect != Aspect.Title)];

    private static Recipe? Read(string? text) =>
        text is not null && CommandRun.Understand(InputFile.Of("", Encoding.UTF8.GetBytes(text))) is { Understood: true, Reading.Recipe: { } recipe } ? recipe : null;
}

/// <summary>A relative of a recipe, in finished words.</summary>
/// <param name="Beside">Address at which the offshoot stands beside what it grew from.</param>
/// <param name="From">What grew from what, and when.</param>
/// <param name="But">How it differs.</param>
/// <param name="Waiting">What it waits for.</param>
public sealed record FamilyMember(string Title, string Address, string Beside, string From, string But, string Waiting)
{
    /// <summary>The state that an offshoot has grown from; null for the base.</summary>
    internal long? GrownFrom { get; init; }

    /// <summary>The first thing in which an offshoot differs; empty where it does in nothing.</summary>
    public string Most { get; init; } = "";
}

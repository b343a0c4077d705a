using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Compare;
using Doughwright.App.Text.Sides;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Differences;
using Doughwright.Engine.Sides;
using Doughwright.Publishing.Pictures.Keys;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Beside;

/// <summary>Two recipes or two states side by side, in finished words and pictures.</summary>
/// <param name="Answer">What changed most, in a sentence or two.</param>
/// <param name="Changed">What differs.</param>
/// <param name="Comes">What that does in the kitchen.</param>
internal sealed record SidesView(
    string Answer,
    IReadOnlyList<SideRow> Changed,
    string ComesTitle,
    IReadOnlyList<ComesRow> Comes,
    IReadOnlyList<string> Notes,
    ComparePictures Pictures,
    WarmthKey Warmth,
    string CombKey)
{
    /// <summary>Changes that a sentence can hold.</summary>
    private const int MostTold = 3;

    /// <param name="causes">What moved the figures; null where that is not worked out.</param>
    public static SidesView Of(ComparedTexts compared, Causes? causes, Voice voice)
    {
        var sides = new SideWords(compared.First, compared.Second, voice);
        var rows = sides.Rows(compared.Differences).ToLookup(row => MovesAlong(row.Difference));
        IReadOnlyList<SideRow> changed = [.. rows[false]];
        var words = new ComesWords(compared.Consequences, voice, causes is null ? null : new(causes, sides, voice));
        var comes = words.Rows();
        return new(
            AnswerOf(changed, comes, voice),
            changed,
            voice.Say("sides.comes", ("kitchen", compared.KitchenName(voice))),
            comes,
            [.. words.Notes(), voice.Words["sides.cue"], .. causes is null ? [] : words.NotesOfCauses(comes)],
            new(ComparisonOf(compared), voice),
            WarmthKey.Of(voice),
            Publishing.Pictures.Keys.CombKey.Draw())
        {
            HasCauses = causes is not null,
            Along = [.. rows[true]],
        };
    }

    /// <summary>What differs because something else does.</summary>
    public IReadOnlyList<SideRow> Along { get; private init; } = [];

    /// <summary>Whether it is known what moved the figures.</summary>
    public bool HasCauses { get; private init; }

    /// <summary>A line that weighs as it was typed in both is another share of another flour: the author changed that and not the line.</summary>
    private static bool MovesAlong(RecipeDifference difference) =>
        difference is { Aspect: Aspect.Amount, First: LineAmount { Mass: { } mass } first, Second: LineAmount second } && first.Typed == second.Typed && mass == second.Mass;

    private static string AnswerOf(IReadOnlyList<SideRow> changed, IReadOnlyList<ComesRow> comes, Voice voice)
    {
        if (changed.Count == 0)
        {
            return voice.Words["sides.alike"];
        }

        // A title or a tool is told when nothing else is to be told.
        var told = changed.OrderByDescending(row => Causes.CanMove(row.Difference.Aspect)).Take(MostTold).Select(row => voice.Say("sides.answer.change", ("what", row.What), ("first", row.First.Text), ("second", row.Second.Text)));
        var total = comes.FirstOrDefault(row => row.Of == "run.total");
        var ready = total is null ? "" : voice.Say(total.IsSame ? "sides.answer.same" : "sides.answer.ready", ("second", total.Second.Text), ("by", total.By));
        return voice.Say("sides.answer", ("changes", voice.List(told)), ("ready", ready))
            + (changed.Count > MostTold ? " " + voice.Say("sides.answer.more", ("count", changed.Count - MostTold)) : "");
    }

    /// <summary>What the pictures of two kitchens are drawn of, for two recipes in one kitchen.</summary>
    private static Comparison ComparisonOf(ComparedTexts compared)
    {
        var come = compared.Consequences;
        Side SideOf(string name, Rehearsal rehearsal) => new(
            "", name, new Understood(Question.Nothing, Request.Home, compared.Kitchen, null, [], [], ""), KeepState.AsWritten, rehearsal);
        return new(
            new("", "", Question.Nothing),
            SideOf(compared.FirstName, come.First),
            SideOf(compared.SecondName, come.Second),
            null,
            new RehearsalDifferences(come.Run),
            []);
    }
}

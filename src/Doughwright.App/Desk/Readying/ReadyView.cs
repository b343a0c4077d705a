using Doughwright.App.Commands;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Recipes.Views;
using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Readying;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Readying;

/// <summary>How a recipe can be ready in time, in words for a page: those of "ready".</summary>
/// <param name="Said">How long it takes as written.</param>
/// <param name="Table">The ways beside each other; null where none does it.</param>
internal sealed record ReadyView(string Said, IReadOnlyList<ReadyWayView> Ways, ReadyTable? Table, string Cue, IReadOnlyList<FindingView> Findings)
{
    /// <param name="file">With a recipe.</param>
    /// <param name="ask">With hours.</param>
    public static ReadyView Of(RecipeFile file, ReadyAsk ask, Voice voice)
    {
        var answer = Ready.Answer(file.Recipe!, Larder.Shipped, Rehearser.RehearseOverSections(file.Formula!, Larder.Shipped, ask.Read.Request).Request, ask.Hours!.Wanted);
        var words = new ReadyWords(answer, ask.Hours, voice);
        var findings = FindingList.Of(file.Text, file.Recipe!, answer.AsWritten, ask.Read.KitchenFindings, file.Findings);
        return new(
            words.AsWritten(),
            [.. answer.Ways.Select(way => ReadyWayView.Of(way, words, voice))],
            answer.Ways.Any(way => way.Obstacle is null) ? ReadyTable.Of(answer, words, voice) : null,
            words.Cue(),
            FindingView.All(findings, file.Recipe, voice));
    }
}

/// <summary>One way.</summary>
/// <param name="Id">Unique on the page.</param>
/// <param name="Refused">Why it does not do it; empty where it does.</param>
/// <param name="Goes">What is weighed and poured otherwise.</param>
/// <param name="Comes">When it is ready.</param>
internal sealed record ReadyWayView(string Id, string Name, string Refused, IReadOnlyList<string> Goes, IReadOnlyList<string> Comes, IReadOnlyList<string> Costs)
{
    public static ReadyWayView Of(ReadyWay way, ReadyWords words, Voice voice)
    {
        var (id, name) = ("ready-" + Voice.Kebab(way.Lever.ToString()), voice.Member(way.Lever));
        return way.Obstacle is { } obstacle
            ? new(id, name, words.Refused(way, obstacle), [], [], [])
            : new(id, name, "", [.. words.Goes(way)], [.. words.Comes(way)], [.. words.Costs(way)]);
    }
}

using Doughwright.App.Commands;
using Doughwright.App.Desk.Mending;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>A finding in its list.</summary>
/// <param name="Kind">What sort it is, in a word: "Missing", "Risky, safety".</param>
/// <param name="Where">In words: "in Mash and cool"; empty for the recipe as a whole.</param>
public sealed record FindingView(int Number, MarkShape Shape, string Kind, string Where, string Message, string WayOut)
{
    /// <summary>What a button can do about it.</summary>
    public IReadOnlyList<WayView> Ways { get; init; } = [];

    /// <summary>Its id where it can be accepted with a reason; else null.</summary>
    public string? Accept { get; init; }

    /// <summary>Id of the finding whose acceptance no longer holds, so that it can be taken out; else null.</summary>
    public string? Stop { get; init; }

    internal static IReadOnlyList<FindingView> All(IReadOnlyList<Finding> findings, Recipe? recipe, Voice voice) =>
        [.. findings.Select((finding, index) => Of(finding, index + 1, recipe, voice))];

    /// <summary>The findings of a recipe on the desk, with what can be done about them there.</summary>
    internal static IReadOnlyList<FindingView> All(DeskState state, Voice voice) =>
    [
        .. state.Findings.Zip(All(state.Findings, state.Recipe, voice), (finding, view) => view with
        {
            Ways = WayView.All(state.Offers, finding, voice),
            Accept = state.Acceptable.Contains(finding.Id) ? finding.Id : null,
            Stop = state.File.IsWhole ? StopOf(finding) : null,
        }),
    ];

    /// <summary>The findings of a text that was not understood.</summary>
    internal static IReadOnlyList<FindingView> All(RecipeFile file, Voice voice)
    {
        var offers = file.IsWhole ? Offers.Of(file.Findings, null) : Offers.None;
        return [.. file.Findings.Zip(All(file.Findings, null, voice), (finding, view) => view with { Ways = WayView.All(offers, finding, voice) })];
    }

    /// <summary>Id of the finding whose acceptance no longer holds, where this says so of one; else null.</summary>
    internal static string? StopOf(Finding finding) =>
        finding.Place.StartsWith(Acceptance, StringComparison.Ordinal) ? finding.Arguments.GetValueOrDefault("finding") as string : null;

    private const string Acceptance = "accepted.";

    /// <summary>"2 missing, 1 risky and 3 to know."</summary>
    internal static string Count(IReadOnlyList<FindingView> all, Voice voice)
    {
        var counts = all.GroupBy(finding => finding.Shape).OrderBy(group => group.Key)
            .Select(group => voice.Say($"recipe.count.{Voice.Kebab(group.Key.ToString())}", ("count", group.Count())))
            .ToArray();
        return counts.Length == 0 ? voice.Words["recipe.count.none"] : voice.Say("recipe.count", ("counts", voice.List(counts)));
    }

    private static FindingView Of(Finding finding, int number, Recipe? recipe, Voice voice)
    {
        var shape = FindingShape.Of(finding);
        var kind = voice.Words[$"recipe.mark.{Voice.Kebab(shape.ToString())}"];
        return new(
            number,
            shape,
            finding.Safety ? voice.Say("recipe.mark.safety", ("kind", kind)) : kind,
            Place(finding, recipe, voice),
            FindingWords.Message(finding, voice),
            FindingWords.WayOut(finding, voice));
    }

    private static string Place(Finding finding, Recipe? recipe, Voice voice)
    {
        var parts = finding.Place.Split('.');
        return parts switch
        {
            ["steps", var step, ..] => voice.Say("recipe.in", ("place", recipe?.FindStep(step)?.Name ?? step)),
            ["parts", var part, var line, ..] when recipe?.FindComponent(part) is { } component && component.Lines.FirstOrDefault(known => known.Id == line) is { } known =>
                voice.Say("recipe.in-line", ("part", component.Name), ("line", known.Name)),
            ["parts", var part, ..] => voice.Say("recipe.in", ("place", recipe?.FindComponent(part)?.Name ?? part)),
            ["kitchen-file", ..] => finding.Position.IsKnown ? voice.Say("recipe.in-kitchen-line", ("line", finding.Position.Line)) : voice.Words["recipe.in-kitchen"],
            _ when finding.Position.IsKnown => voice.Say("recipe.in-text-line", ("line", finding.Position.Line)),
            _ => "",
        };
    }
}

using Doughwright.App.Desk.Recipes.Views;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>A step of the method, closed as a row and opened with its fields.</summary>
/// <param name="Kind">"rise, no hands".</param>
/// <param name="Ends">How it ends, as written.</param>
/// <param name="Fields">What is said of it, field by field.</param>
/// <param name="Words">Words for the reader, as written.</param>
/// <param name="Reads">The same as it reads at home; live values are set off. Empty where there are none.</param>
public sealed record StepView(
    string Id, string Place, string Name, string Kind, string Ends, string Cue, IReadOnlyList<StepField> Fields, string Words, IReadOnlyList<(string Text, bool IsLive)> Reads, IReadOnlyList<FindingView> Findings)
{
    /// <summary>What was measured, thing by thing.</summary>
    public IReadOnlyDictionary<MeasuredSaid, string> Measured { get; init; } = new Dictionary<MeasuredSaid, string>();

    /// <summary>Photos of it.</summary>
    public IReadOnlyList<Photo> Photos { get; init; } = [];

    /// <summary>Other ways to do it; nothing while it is closed.</summary>
    public IReadOnlyList<VariantView> Variants { get; init; } = [];

    internal static IReadOnlyList<StepView> All(Manuscript manuscript, Recipe recipe, PlacedFindings findings, Func<string, bool> isOpen, Voice voice) =>
        [.. recipe.Steps.Select(step => Of(manuscript, recipe, step, findings, isOpen, voice))];

    private static StepView Of(Manuscript manuscript, Recipe recipe, Step step, PlacedFindings findings, Func<string, bool> isOpen, Voice voice)
    {
        var said = StepEdits.Said(recipe, step);
        var place = $"steps.{step.Id}";
        var words = said.GetValueOrDefault("words", "");
        // Only what is looked at is worked out.
        var rehearsal = words.Contains('[') && isOpen(place) ? manuscript.Worked.AtHome : null;
        return new(
            step.Id,
            place,
            step.Name,
            voice.Say(said.ContainsKey("hands") ? "write.step-hands" : "write.step-alone", ("kind", voice.Member(step.Kind)), ("of", recipe.FindComponent(step.Component)?.Name ?? step.Component), ("hands", step.Hands)),
            said.GetValueOrDefault("ends", said.TryGetValue("measured", out var measured) ? measured : ""),
            step.Cue ?? "",
            isOpen(place) ? StepField.All(recipe, step, said, voice) : [],
            words,
            rehearsal is null ? [] : [.. LiveProse.Pieces(words, step.Id, rehearsal, voice).Select(piece => (piece.Text, piece.Name is not null))],
            findings.Take(place))
        {
            Measured = Enum.GetValues<MeasuredSaid>().ToDictionary(one => one, one => MeasuredEdits.Said(step, one)),
            Photos = step.Photos,
            Variants = isOpen(place) ? VariantView.All(recipe, step, said, isOpen, voice) : [],
        };
    }
}

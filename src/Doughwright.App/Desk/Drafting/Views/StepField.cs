using Doughwright.App.Text.Sides;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Sides;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>One thing that a step says.</summary>
/// <param name="Key">As the text calls it.</param>
/// <param name="Label">What it is.</param>
/// <param name="Value">As the text writes it; empty where nothing is said.</param>
/// <param name="Hint">How it can be written; empty where that is plain.</param>
/// <param name="Choices">What it can be, value and name; empty for what is typed.</param>
public sealed record StepField(string Key, string Label, string Value, string Hint, IReadOnlyList<(string Value, string Name)> Choices)
{
    /// <summary>What is offered under the field while it is typed, value and what that is: any other can be typed too.</summary>
    public IReadOnlyList<(string Value, string Name)> Offers { get; init; } = [];

    private const string Kind = "kind";
    private const string Part = "of";
    private const string Vessel = "vessel";
    private const string Notes = "learn";

    private static readonly string[] Always = ["name", Kind, Part, "where", "hands", "ends", "tools", Notes];

    /// <summary>What a kind of step needs beside that.</summary>
    private static readonly Dictionary<StepKind, string[]> Needs = new()
    {
        [StepKind.Prepare] = [],
        [StepKind.Cook] = [Vessel],
        [StepKind.Scald] = [Vessel, "cover"],
        [StepKind.Cool] = [Vessel, "depth", "cover"],
        [StepKind.Warm] = [Vessel, "depth", "cover"],
        [StepKind.Mix] = ["way", Vessel, "order"],
        [StepKind.Rest] = [Vessel, "cover"],
        [StepKind.Bulk] = [Vessel, "cover", "fold"],
        [StepKind.Shape] = [],
        [StepKind.Proof] = [Vessel, "trays", "cover"],
        [StepKind.Glaze] = [],
        [StepKind.Preheat] = ["oven"],
        [StepKind.Bake] = ["oven", "trays", "on", "steam", "lid", Vessel],
        [StepKind.Finish] = [],
    };

    /// <summary>In the order in which they are said.</summary>
    private static readonly string[] InOrder =
        ["name", Kind, Part, "where", Vessel, "depth", "cover", "trays", "oven", "on", "steam", "lid", "hands", "way", "order", "fold", "folds", "ends", "tools", Notes];

    internal static IReadOnlyList<StepField> All(Recipe recipe, Step step, IReadOnlyDictionary<string, string> said, Voice voice)
    {
        string[] needed = [.. Always, .. Needs[step.Kind]];
        // A list of folds takes the place of the one.
        return
        [
            .. InOrder.Where(key => said.ContainsKey(key) || (needed.Contains(key) && !(key == "fold" && said.ContainsKey("folds"))))
                .Select(key => new StepField(key, voice.Words["write.step." + key], said.GetValueOrDefault(key, ""), voice.Words["write.step-hint." + key], ChoicesOf(recipe, key, voice))
                {
                    Offers = key == Vessel ? VesselsAtHome(recipe, voice) : [],
                }),
        ];
    }

    private static IReadOnlyList<(string, string)> ChoicesOf(Recipe recipe, string key, Voice voice) => key == Part
        ? [.. recipe.Components.Select(part => (part.Id, part.Name))]
        : StepEdits.Choices(key) is { } words ? [.. key is Kind or "where" ? [] : new[] { ("", voice.Words["write.step-unsaid"]) }, .. words.Select(word => (word, ChoiceWords.Of(key, word, voice)))] : [];

    /// <summary>A step may name a vessel of the kitchen that the recipe is tested in.</summary>
    private static IReadOnlyList<(string, string)> VesselsAtHome(Recipe recipe, Voice voice)
    {
        var values = new SideValues(recipe, voice);
        return [.. recipe.Home.Vessels.Select(vessel => (vessel.Name!, values.Cell(Aspect.Vessel, vessel).Text))];
    }
}

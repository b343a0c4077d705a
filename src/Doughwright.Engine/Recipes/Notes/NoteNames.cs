using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes.Live;

namespace Doughwright.Engine.Recipes.Notes;

/// <summary>
/// The names that a note can write in brackets. It stands at a step of any recipe, so "this" means that step, whatever it is called there; all other
/// names are those that the words of that step may have.
/// </summary>
public static class NoteNames
{
    public const string ThisStep = "this step";
    public const string ThisPart = "this part";
    public const string ThisTime = "this time";
    public const string ThisTemperature = "this temperature";
    public const string ThisPartTemperature = "this part temperature";
    public const string ThisWeight = "this weight";
    public const string ThisCue = "this cue";

    /// <summary>What a name stands for in a recipe; null when it has nothing of this name.</summary>
    /// <param name="step">Id of the step at which the note stands; null when it is read beside the steps.</param>
    public static LiveName? Find(Recipe recipe, string words, string? step) =>
        step is not null && recipe.FindStep(step) is { } own && OfStep(own).FirstOrDefault(name => Slug.Of(name.Words) == Slug.Of(words)) is { } known
            ? known
            : LiveNames.Find(recipe, words, step);

    /// <summary>Whether a name is of the step at which a note stands.</summary>
    public static bool IsOfStep(string words) => Slug.Of(words) is var slug && All.Any(name => Slug.Of(name) == slug);

    private static readonly string[] All = [ThisStep, ThisPart, ThisTime, ThisTemperature, ThisPartTemperature, ThisWeight, ThisCue];

    private static LiveName[] OfStep(Step step) =>
    [
        new(ThisStep, LiveKind.StepName, step.Id),
        new(ThisPart, LiveKind.PartName, Part: step.Component),
        new(ThisTime, LiveKind.StepTime, step.Id),
        new(ThisTemperature, LiveKind.StepTemperature, step.Id),
        new(ThisPartTemperature, LiveKind.PartTemperature, Part: step.Component),
        new(ThisWeight, LiveKind.PartWeight, Part: step.Component),
        new(ThisCue, LiveKind.StepCue, step.Id),
    ];
}

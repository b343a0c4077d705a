using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes.Live;

namespace Doughwright.Engine.Rehearsals;

/// <summary>The value that a name in brackets has in a rehearsal: in the reader's kitchen, not in the author's.</summary>
public static class LiveValue
{
    /// <summary>
    /// A <see cref="Duration"/>, a <see cref="Temperature"/>, a <see cref="Mass"/>, a count, a <see cref="Baking.Dial"/> or words of the author; null when it
    /// cannot be worked out here: a step that never ends has no time.
    /// </summary>
    public static object? Of(LiveName name, Rehearsal rehearsal)
    {
        var step = name.Step is { } id ? rehearsal.FindStep(id) : null;
        return name.Kind switch
        {
            LiveKind.StepTime => step?.Time?.Likely,
            LiveKind.StepTemperature => step?.EndTemperature,
            LiveKind.StepOven => step?.Dial,
            LiveKind.FoldAfter => step?.Events.ElementAtOrDefault(name.Index)?.After.Likely,
            LiveKind.PartTemperature => rehearsal.Components.FirstOrDefault(part => part.Id == name.Part)?.Mixed?.Likely,
            LiveKind.PartWeight => rehearsal.Formula.FindComponent(name.Part!)?.Mass,
            LiveKind.LineWeight => rehearsal.Formula.FindComponent(name.Part!)?.Lines.FirstOrDefault(line => line.Id == name.Line)?.Mass,
            LiveKind.Pieces => rehearsal.Recipe.Make?.Pieces,
            LiveKind.PieceWeight => rehearsal.Recipe.Make?.PieceMass,
            LiveKind.TotalTime => rehearsal.Total?.Likely,
            LiveKind.HandsTime => rehearsal.Hands,
            LiveKind.RoomTemperature => rehearsal.Kitchen.Air.At(Duration.Zero),
            LiveKind.BoilingPoint => rehearsal.Boils,
            LiveKind.StepName => rehearsal.Recipe.FindStep(name.Step!)?.Name,
            LiveKind.PartName => rehearsal.Recipe.FindComponent(name.Part!)?.Name,
            LiveKind.StepCue => (step?.Cue ?? rehearsal.Recipe.FindStep(name.Step!)?.Cue) is { Length: > 0 } cue ? cue : null,
            _ => throw new ArgumentOutOfRangeException(nameof(name), name.Kind, "No such value."),
        };
    }
}

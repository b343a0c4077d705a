using Doughwright.Engine.Recipes.Live;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Publishing.Notes;

/// <summary>Why a value that a recipe has a name for is not known in a rehearsal.</summary>
internal static class Missing
{
    /// <summary>Key of the words; null when it is known.</summary>
    public static string? Reason(LiveName name, Rehearsal here)
    {
        var step = name.Step is { } id ? here.FindStep(id) : null;
        return name.Kind switch
        {
            LiveKind.StepName or LiveKind.PartName => null,
            LiveKind.StepTime or LiveKind.StepTemperature or LiveKind.StepOven or LiveKind.FoldAfter when step is null => "note.why.not-done",
            LiveKind.StepTime when step is { Time: null, SettlesAt: not null } => "note.why.never",
            LiveKind.StepTime when step!.Time is null => "note.why.time",
            LiveKind.StepCue when LiveValue.Of(name, here) is null => "note.why.cue",
            LiveKind.PartWeight when here.Formula.FindComponent(name.Part!) is { } part && part.Lines.Any(line => !line.IsMassKnown) => "note.why.weight",
            LiveKind.LineWeight when here.Formula.FindComponent(name.Part!)?.Lines.FirstOrDefault(line => line.Id == name.Line) is { IsMassKnown: false } => "note.why.weight",
            LiveKind.StepTemperature or LiveKind.PartTemperature when LiveValue.Of(name, here) is null => "note.why.temperature",
            LiveKind.TotalTime when here.Total is null => "note.why.time",
            _ => LiveValue.Of(name, here) is null ? "note.why.not-known" : null,
        };
    }
}

using Doughwright.Engine.Rehearsals;

namespace Doughwright.Publishing.Wording;

/// <summary>What a step is called: the author's words, or the tool's for a step that the tool put in.</summary>
internal static class StepName
{
    public static string Of(RehearsedStep step, Voice voice) =>
        step.IsAdded ? voice.Say($"step-name.{Voice.Kebab(step.Kind.ToString())}", ("name", step.Name)) : step.Name;
}

using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Rise;

/// <summary>The picture told: title, and all that stands in it.</summary>
internal static class RiseWords
{
    public static string Title(RehearsedStep step, Voice voice) =>
        voice.Say(step.Kind == StepKind.Proof ? "rise.title-proof" : "rise.title-bulk", ("step", StepName.Of(step, voice)));

    public static string Description(RiseCurve own, RehearsedStep step, IReadOnlyList<OtherRise> others, Voice voice)
    {
        var told = new List<string> { End(own, step, voice) };
        if (step.Cue is { Length: > 0 } cue)
        {
            told.Add(voice.Say("rise.description-cue", ("cue", cue)));
        }

        told.Add(voice.Say("rise.description-warmth", ("from", own.Likely[0].Temperature), ("to", step.EndTemperature ?? own.Likely[^1].Temperature)));
        if (step.Events.Count > 0)
        {
            told.Add(voice.Say("rise.description-folds", ("times", step.Events.Select(done => done.After.Likely))));
        }

        told.AddRange(others.Select(other => voice.Say("rise.description-other", ("name", other.Name), ("time", RiseTime.Of(other.Time, voice)))));
        return string.Join(" ", told);
    }

    private static string End(RiseCurve own, RehearsedStep step, Voice voice) =>
        step.Time is not { } time ? voice.Say("rise.description-never")
        : own.Target is null && step.Kind != StepKind.Proof ? voice.Say("rise.description-clock", ("time", time.Likely))
        : RiseTime.RangeOf(time, voice) is null ? voice.Say("rise.description-stated", ("time", time.Likely))
        : voice.Say("rise.description-ends", ("time", time.Likely), ("range", voice.Range(time.Low, time.High, inSentence: true)));
}

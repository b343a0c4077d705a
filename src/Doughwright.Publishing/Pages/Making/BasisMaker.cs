using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Making;

/// <summary>Where the figures of a page come from, in sentences.</summary>
internal sealed class BasisMaker(Rehearsal here, Voice voice)
{
    public IEnumerable<string> All(PageStamp stamp)
    {
        foreach (var basis in new[] { Basis.Measured, Basis.Computed, Basis.Stated })
        {
            var steps = here.Steps.Where(step => step.Basis == basis && step.Time is not null).Select(step => Capital.Small(StepName.Of(step, voice))).Distinct().ToArray();
            if (steps.Length > 0)
            {
                yield return voice.Say("page.basis." + Voice.Kebab(basis.ToString()), ("steps", steps));
            }
        }

        var often = here.Recipe.Steps.Where(step => step.Measured is { TimesSeen: > 1 }).ToArray();
        if (often.Length > 0)
        {
            yield return voice.Say("page.basis-seen", ("steps", often.Select(Seen)));
        }

        yield return voice.Words["page.basis-range"];
        yield return voice.Say("page.basis-made", ("state", stamp.State[..Math.Min(12, stamp.State.Length)]), ("engine", stamp.Engine), ("larder", stamp.Larder));
    }

    private string Seen(Step step) => voice.Say("page.basis-seen-step", ("step", Capital.Small(step.Name)), ("times", step.Measured!.TimesSeen));
}

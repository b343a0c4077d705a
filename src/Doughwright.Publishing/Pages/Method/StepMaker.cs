using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pages.Making;
using Doughwright.Publishing.Pages.Measures;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Method;

/// <summary>Makes the steps of a page, in the order in which they begin.</summary>
/// <param name="notes">Notes of the page by the id of the step that links to them.</param>
/// <param name="photos">The bytes of a photo by its name; null where it is not at hand.</param>
internal sealed class StepMaker(Rehearsal here, Both both, ILookup<string, (string Id, string Title)> notes, Func<string, byte[]?> photos)
{
    private readonly StepFacts facts = new(here, both);

    public IReadOnlyList<PageStep> All() => [.. here.Steps
        .Select((step, index) => (Step: step, Start: step.Start?.Minutes ?? 1e9 + index, Index: index))
        .OrderBy(each => each.Start)
        .ThenBy(each => each.Index)
        .Select(each => Of(each.Step))];

    private PageStep Of(RehearsedStep step)
    {
        var written = step.IsAdded ? null : here.Recipe.FindStep(step.Id);
        var live = LiveValues.Of(here, both, step.Id);
        var paragraphs = Prose.Paragraphs(written?.Words, live).ToList();
        var known = facts.Of(step, written, paragraphs.Count > 0).Where(fact => fact.Length > 0).ToArray();
        if (known.Length > 0)
        {
            paragraphs.Add(string.Join(' ', known));
        }

        paragraphs.AddRange(written is null ? [] : written.Variants.Select(variant => Variant(variant, written, live)));
        return new(Capital.Of(StepName.Of(step, both.Voice)), Time(step), paragraphs, step.Cue is { Length: > 0 } cue ? live(cue) : null)
        {
            Notes = [.. notes[step.Id]],
            Photos = PagePhoto.All(written?.Photos ?? [], photos),
        };
    }

    /// <summary>"2:15, about 1 h 45 min (1 h 34 min to 1 h 58 min), measured".</summary>
    private string Time(RehearsedStep step)
    {
        var parts = new List<string> { Start(step) };
        var hands = step.Hands - Duration.FromMinutes(step.Events.Sum(each => each.Hands.Minutes));
        var rest = (step.Time?.Likely ?? Duration.Zero) - hands;
        if (hands.Minutes >= 0.5)
        {
            parts.Add(both.Say("page.work", ("time", hands)));
        }

        if (step.SettlesAt is { } settles)
        {
            parts.Add(both.Say("page.never", ("temperature", both.Degrees(settles))));
        }
        else if (step.Time is not { } time)
        {
            parts.Add(both.Say("page.time-not-known"));
        }
        else if (rest.Minutes >= 0.5)
        {
            parts.Add(Rest(time, hands, step.Basis));
        }

        if (step.Ripe is { } ripe)
        {
            parts.Add(both.Say(
                ripe.Latest is null ? "page.ripe-window-open" : "page.ripe-window",
                ("earliest", ripe.Earliest),
                ("latest", ripe.Latest ?? ripe.Earliest)));
        }

        parts.AddRange(step.Events.Select(each => both.Say("page.within", ("what", both.Voice.Words["event." + each.What]), ("after", each.After.Likely), ("time", each.Hands))));
        return string.Join(both.Voice.Words["list-comma"], parts);
    }

    private string Start(RehearsedStep step) => step.Start switch
    {
        null => both.Say("page.start-not-known"),
        { Minutes: < -0.5 } before => both.Say("page.before", ("time", before * -1)),
        { } start => Show.DurationColumn(start),
    };

    /// <summary>What is waited. A time that the author only states is as good as the author's word; the others have a range.</summary>
    private string Rest(Estimate<Duration> time, Duration hands, Basis basis)
    {
        var then = hands.Minutes >= 0.5 ? "page.then-" : "page.wait-";
        var likely = time.Likely - hands;
        var (low, high) = (time.Low - hands, time.High - hands);
        var exact = high is { } end && Show.Duration(end) == Show.Duration(low);
        return both.Say(
            then + (exact ? "exactly" : "about"),
            ("time", likely),
            ("range", exact ? "" : both.Voice.Range(low, high, inSentence: true)),
            ("basis", both.Voice.Member(basis)));
    }

    private string Variant(StepVariant variant, Step written, Func<string, string> live)
    {
        var name = variant.Step.Name == written.Name ? Engine.Ingredients.Slug.InWords(variant.Id) : variant.Step.Name;
        return string.Join(' ', VariantWords(variant.Step, written, live).Prepend(both.Say("page.variant", ("way", Capital.Small(name)))));
    }

    private IEnumerable<string> VariantWords(Step step, Step usual, Func<string, string> live)
    {
        if (step.Hands > Duration.Zero)
        {
            yield return both.Say("page.variant-work", ("time", step.Hands));
        }

        if (step.Measured?.Time is { } measured)
        {
            yield return both.Say("page.variant-measured", ("time", measured));
        }
        else if (step.End is StepEnd.AfterTime after)
        {
            yield return both.Say("page.variant-takes", ("time", after.Time));
        }

        // What it has from its step stands there already.
        foreach (var paragraph in Prose.Paragraphs(step.Words == usual.Words ? null : step.Words, live))
        {
            yield return paragraph;
        }

        if (step.Cue is { Length: > 0 } cue && cue != usual.Cue)
        {
            yield return both.Say("page.variant-cue", ("cue", live(cue)));
        }
    }
}

using Doughwright.App.Commands;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Readying;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>How a recipe can be ready in time, in sentences: the same in a terminal and on the desk.</summary>
internal sealed class ReadyWords(ReadyAnswer answer, ReadyHours hours, Voice voice)
{
    public string Title() => voice.Say(
        "ready.title",
        ("title", answer.AsWritten.Recipe.Title),
        ("by", Clock(answer.Wanted)),
        ("start", hours.After(Duration.Zero).Clock),
        ("wanted", answer.Wanted));

    public string AsWritten() => answer.AsWritten.Total is { } total
        ? voice.Say("ready.as-written", ("total", total.Likely), ("at", Clock(total.Likely)))
        : voice.Words["ready.as-written-unknown"];

    /// <summary>What is weighed and poured otherwise.</summary>
    public IEnumerable<string> Goes(ReadyWay way) =>
    [
        .. way.Doses.Select(dose => voice.Say("ready.dose", ("name", dose.Name), ("now", dose.Now), ("was", dose.Was))),
        .. way.Water is { } water ? Poured(water) : [],
    ];

    /// <summary>When it is ready; with yeast as the scale shows it, where that is another weight.</summary>
    /// <param name="way">That does it.</param>
    public IEnumerable<string> Comes(ReadyWay way)
    {
        var total = way.Rehearsal!.Total!.Value;
        yield return voice.Say(
            total.High is null ? "ready.outcome-open" : "ready.outcome",
            ("at", Clock(total.Likely)),
            ("low", Clock(total.Low)),
            ("high", Clock(total.High ?? total.Low)));
        if (way.AsWeighed is { } weighed && way.Doses.Any(dose => Show.Mass(dose.Weighed) != Show.Mass(dose.Now)))
        {
            yield return voice.Say(
                "ready.as-weighed",
                ("doses", way.Doses.Select(dose => voice.Say("ready.weighed-dose", ("mass", dose.Weighed), ("name", dose.Name)))),
                ("at", Clock(weighed)));
        }
    }

    /// <summary>What it costs beside: steps that take another time, and what is to be told of this way alone.</summary>
    public IEnumerable<string> Costs(ReadyWay way)
    {
        if (way.Moves.Count > 0)
        {
            yield return voice.Say("ready.moves", ("moves", way.Moves.Select(move => voice.Say(
                "ready.move", ("step", NameOf(move)), ("was", Show.DurationColumn(move.Was)), ("now", Show.DurationColumn(move.Now))))));
        }

        foreach (var finding in way.Findings)
        {
            yield return voice.Say("ready.mind", ("finding", FindingWords.Message(finding, voice)));
        }
    }

    /// <summary>Why a way does not do it, and how near it comes.</summary>
    public string Refused(ReadyWay way, ReadyObstacle obstacle) => (obstacle, way.Latest) switch
    {
        (ReadyObstacle.OutOfReach, { } latest) => voice.Say("ready.out-of-reach", ("soonest", Clock(way.Soonest!.Value)), ("latest", Clock(latest))),
        (ReadyObstacle.OutOfReach, null) => voice.Say("ready.out-of-reach-open", ("soonest", Clock(way.Soonest!.Value))),
        (ReadyObstacle.JumpsPast, { } latest) => voice.Say("ready.jumps-past", ("soonest", Clock(way.Soonest!.Value)), ("latest", Clock(latest))),
        (ReadyObstacle.JumpsPast, null) => voice.Say("ready.jumps-past-open", ("soonest", Clock(way.Soonest!.Value))),
        _ => voice.Member(obstacle),
    };

    public string Cue() => voice.Words["ready.cue"];

    /// <summary>The time of day, with the day where it is later than the one that was asked for, or more than a night away.</summary>
    public string Clock(Duration elapsed)
    {
        var (clock, days) = hours.After(elapsed);
        return days == 0 || (days == 1 && hours.After(answer.Wanted).Days == 1) ? clock
            : voice.Say(days == 1 ? "ready.next-day" : "ready.days-later", ("clock", clock), ("days", days));
    }

    public string NameOf(ReadyMove move) => answer.AsWritten.FindStep(move.Step) is { } step ? StepName.Of(step, voice) : move.Name;

    private IEnumerable<string> Poured(ReadyWater water)
    {
        yield return voice.Say(
            "ready.water",
            ("lines", water.Lines.Select(line => line.Was is { } was ? voice.Say("ready.water-was", ("name", line.Name), ("was", was)) : line.Name)),
            ("now", water.Now));
        if (water.Now < answer.AsWritten.Kitchen.Tap)
        {
            yield return voice.Say("ready.colder-than-tap", ("tap", answer.AsWritten.Kitchen.Tap));
        }

        if (water.Dough is { } dough)
        {
            yield return voice.Say("ready.water-dough", ("dough", dough.Likely));
        }
    }
}

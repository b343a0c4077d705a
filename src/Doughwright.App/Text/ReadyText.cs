using Doughwright.App.Commands;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Readying;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>What to weigh or pour otherwise to be ready in time: each way with when it is ready, what it moves and what it costs.</summary>
internal sealed class ReadyText(ReadyAnswer answer, ReadyHours hours, Voice voice)
{
    private readonly Page page = new();

    public static string Write(ReadyAnswer answer, ReadyHours hours, Judgement findings, Voice voice)
    {
        var text = new ReadyText(answer, hours, voice);
        text.WriteHead();
        foreach (var way in answer.Ways)
        {
            text.WriteWay(way);
        }

        text.page.Gap();
        text.page.Paragraph(voice.Say("ready.cue"));
        FindingsText.WriteSection(text.page, findings, voice);
        return text.page.ToString();
    }

    private void WriteHead()
    {
        var run = answer.AsWritten;
        page.Paragraph(voice.Say(
            "ready.title",
            ("title", run.Recipe.Title),
            ("by", Clock(answer.Wanted)),
            ("start", hours.After(Duration.Zero).Clock),
            ("wanted", answer.Wanted)));
        page.Gap();
        page.Paragraph(run.Total is { } total
            ? voice.Say("ready.as-written", ("total", total.Likely), ("at", Clock(total.Likely)))
            : voice.Say("ready.as-written-unknown"));
    }

    private void WriteWay(ReadyWay way)
    {
        page.Heading(voice.Member(way.Lever));
        if (way.Obstacle is { } obstacle)
        {
            page.Paragraph(Refused(way, obstacle), 2);
            return;
        }

        foreach (var dose in way.Doses)
        {
            page.Paragraph(voice.Say("ready.dose", ("name", dose.Name), ("now", dose.Now), ("was", dose.Was)), 2);
        }

        if (way.Water is { } water)
        {
            WriteWater(water);
        }

        page.Paragraph(Outcome(way), 2);
        if (way.AsWeighed is { } weighed && way.Doses.Any(dose => Show.Mass(dose.Weighed) != Show.Mass(dose.Now)))
        {
            page.Paragraph(voice.Say(
                "ready.as-weighed",
                ("doses", way.Doses.Select(dose => voice.Say("ready.weighed-dose", ("mass", dose.Weighed), ("name", dose.Name)))),
                ("at", Clock(weighed))), 2);
        }

        if (way.Moves.Count > 0)
        {
            page.Paragraph(voice.Say("ready.moves", ("moves", way.Moves.Select(move => voice.Say(
                "ready.move", ("step", NameOf(move)), ("was", Show.DurationColumn(move.Was)), ("now", Show.DurationColumn(move.Now)))))), 2, 2);
        }

        foreach (var finding in way.Findings)
        {
            page.Paragraph(voice.Say("ready.mind", ("finding", FindingWords.Message(finding, voice))), 2, 2);
        }
    }

    private void WriteWater(ReadyWater water)
    {
        page.Paragraph(voice.Say(
            "ready.water",
            ("lines", water.Lines.Select(line => line.Was is { } was ? voice.Say("ready.water-was", ("name", line.Name), ("was", was)) : line.Name)),
            ("now", water.Now)), 2);
        if (water.Now < answer.AsWritten.Kitchen.Tap)
        {
            page.Paragraph(voice.Say("ready.colder-than-tap", ("tap", answer.AsWritten.Kitchen.Tap)), 2);
        }

        if (water.Dough is { } dough)
        {
            page.Paragraph(voice.Say("ready.water-dough", ("dough", dough.Likely)), 2);
        }
    }

    private string Outcome(ReadyWay way)
    {
        var total = way.Rehearsal!.Total!.Value;
        return voice.Say(
            total.High is null ? "ready.outcome-open" : "ready.outcome",
            ("at", Clock(total.Likely)),
            ("low", Clock(total.Low)),
            ("high", Clock(total.High ?? total.Low)));
    }

    private string Refused(ReadyWay way, ReadyObstacle obstacle) => (obstacle, way.Latest) switch
    {
        (ReadyObstacle.OutOfReach, { } latest) => voice.Say("ready.out-of-reach", ("soonest", Clock(way.Soonest!.Value)), ("latest", Clock(latest))),
        (ReadyObstacle.OutOfReach, null) => voice.Say("ready.out-of-reach-open", ("soonest", Clock(way.Soonest!.Value))),
        (ReadyObstacle.JumpsPast, { } latest) => voice.Say("ready.jumps-past", ("soonest", Clock(way.Soonest!.Value)), ("latest", Clock(latest))),
        (ReadyObstacle.JumpsPast, null) => voice.Say("ready.jumps-past-open", ("soonest", Clock(way.Soonest!.Value))),
        _ => voice.Member(obstacle),
    };

    private string NameOf(ReadyMove move) => answer.AsWritten.FindStep(move.Step) is { } step ? StepName.Of(step, voice) : move.Name;

    /// <summary>The time of day, with the day where it is later than the one that was asked for, or more than a night away.</summary>
    private string Clock(Duration elapsed)
    {
        var (clock, days) = hours.After(elapsed);
        return days == 0 || (days == 1 && hours.After(answer.Wanted).Days == 1) ? clock
            : voice.Say(days == 1 ? "ready.next-day" : "ready.days-later", ("clock", clock), ("days", days));
    }
}

using Doughwright.Engine.Baking;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>The steps of a rehearsal, one row each. A time that ends by a cue stands with its cue.</summary>
internal sealed class StepTable(Rehearsal rehearsal, Voice voice)
{
    public void WriteTo(Page page)
    {
        var table = new Table(Columns());
        foreach (var step in rehearsal.Steps.OrderBy(step => step.Start?.Minutes ?? double.MaxValue))
        {
            table.Add(Cells(step));
            foreach (var note in Notes(step))
            {
                table.Note(note);
            }
        }

        table.WriteTo(page);
    }

    private Table.Column[] Columns()
    {
        var hours = voice.Words["head.hours"];
        Table.Column[] columns =
        [
            new(voice.Words["head.start"], Align.Right, hours),
            new(voice.Words["head.step"], Align.Left),
            new(voice.Words["head.takes"], Align.Right, hours),
            new(voice.Words["head.range"], Align.Left, hours),
            new(voice.Words["head.home"], Align.Right, hours),
            new(voice.Words["head.temperature"], Align.Left, voice.DegreeUnit.Trim('\u00a0')),
            new(voice.Words["head.basis"], Align.Left),
        ];
        return rehearsal.AtHome ? [.. columns.Where((_, i) => i != HomeColumn)] : columns;
    }

    private const int HomeColumn = 4;

    private string[] Cells(RehearsedStep step)
    {
        string[] cells =
        [
            step.Start is { } start ? Show.DurationColumn(start) : voice.Words["not-known-short"],
            StepName.Of(step, voice),
            step.Time is { } time ? Show.DurationColumn(time.Likely) : voice.Words[step.SettlesAt is null ? "cannot-be-told" : "never-here"],
            step.Time is { } spread ? Range(spread) : "",
            step.HomeTime is { } home ? Show.DurationColumn(home) : "",
            Temperatures(step),
            voice.Member(step.Basis),
        ];
        return rehearsal.AtHome ? [.. cells.Where((_, i) => i != HomeColumn)] : cells;
    }

    /// <summary>Empty when the range is no wider than what is printed.</summary>
    private string Range(Estimate<Duration> time) =>
        time.High is { } high && Show.DurationColumn(time.Low) == Show.DurationColumn(high) ? "" : voice.Range(time.Low, time.High);

    private string Temperatures(RehearsedStep step) => (step.StartTemperature, step.EndTemperature) switch
    {
        ({ } start, { } end) when voice.Degrees(start) == voice.Degrees(end) => voice.Degrees(start),
        ({ } start, { } end) => voice.Say("range", ("low", voice.Degrees(start)), ("high", voice.Degrees(end))),
        ({ } start, null) => voice.Degrees(start),
        (null, { } end) => voice.Degrees(end),
        _ => "",
    };

    private IEnumerable<string> Notes(RehearsedStep step)
    {
        if (step.SettlesAt is { } settles)
        {
            yield return voice.Say("settles", ("temperature", settles));
        }

        if (step.Ripe is { } ripe)
        {
            yield return voice.Say(
                ripe.Latest is null ? "ripe-window-open" : "ripe-window",
                ("earliest", Show.DurationColumn(ripe.Earliest)),
                ("latest", Show.DurationColumn(ripe.Latest ?? ripe.Earliest)));
        }

        foreach (var happening in step.Events)
        {
            yield return Happening(happening);
        }

        if (step.RisesMeanwhile is { } growth)
        {
            yield return voice.Say("rises-meanwhile", ("growth", Show.Number(growth, 1)));
        }

        if (step.Dial is { } dial)
        {
            yield return voice.Say("dial", ("here", Setting(dial.Here)), ("others", dial.Others.Select(Setting)));
            if (dial.Then is { } then)
            {
                yield return voice.Say("dial-then", ("after", then.After), ("here", Setting(then.Dial.Here)), ("others", then.Dial.Others.Select(Setting)));
            }
        }

        foreach (var said in InOven(step))
        {
            yield return said;
        }

        if (step.Cue is { } cue)
        {
            yield return voice.Say("cue", ("cue", LiveProse.Of(cue, step.Id, rehearsal, voice)));
        }
    }

    private IEnumerable<string> InOven(RehearsedStep step)
    {
        if (step is { Kind: StepKind.Bake, On: not BakedOn.Tray })
        {
            yield return voice.Say(step.On == BakedOn.Stone ? "bake-on-stone" : "bake-on-rack");
        }

        if (step is { Kind: StepKind.Bake, Steam: { } steam })
        {
            yield return voice.Say("bake-steam", ("time", steam));
        }

        if (step is { Kind: StepKind.Bake, LidOff: { } off })
        {
            yield return voice.Say("bake-lid-off", ("time", off));
        }
    }

    private string Happening(StepEvent happening)
    {
        var after = happening.After;
        var range = Range(after);
        return voice.Say(
            range.Length == 0 ? "event" : "event-range",
            ("what", voice.Words[$"event.{happening.What}"]),
            ("after", Show.DurationColumn(after.Likely)),
            ("range", range),
            ("hands", happening.Hands));
    }

    private string Setting(DialSetting setting) => voice.Say(
        "dial-setting",
        ("mode", voice.Oven(setting.Mode)),
        ("celsius", Show.Number(setting.Celsius, 0)),
        ("fahrenheit", Show.Number(setting.Fahrenheit, 0)));
}

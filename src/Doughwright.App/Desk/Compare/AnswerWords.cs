using Doughwright.App.Desk.Asking;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Differences;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Compare;

/// <summary>The answer in two paragraphs: how much sooner or later and what needs another hand; and what nobody's hand would come to.</summary>
internal sealed class AnswerWords(Comparison comparison, Voice voice)
{
    /// <summary>A reader's table counts in fives: a rise that moves by less needs no other hand.</summary>
    private const double WorthSaying = 5;

    private readonly CellMaker cells = new(comparison, voice);

    private Side First => comparison.First;

    private Side Second => comparison.Second;

    public Rich Answer()
    {
        var things = Things();
        var ready = Ready();
        return things.Count == 0
            ? Rich.Say(voice, "compare.answer.nothing", ("ready", ready))
            : Rich.Say(voice, "compare.answer.things", ("ready", ready), ("things", Rich.List(voice, things)));
    }

    /// <summary>What the second kitchen would come to untouched, or why its dough is not kept.</summary>
    public Rich OtherParagraph() => comparison.Untouched is { } untouched ? Untouched(untouched) : Second.Keep switch
    {
        KeepState.AsWritten => Rich.Say(voice, "compare.as-written", ("dough", DoughOf(Second.Rehearsal, "second")), ("was", WasDough())),
        KeepState.DoughUnknown => Rich.Plain(voice.Words["compare.keep.dough-unknown"]),
        KeepState.NothingFree => Rich.Plain(voice.Words["compare.keep.nothing-free"]),
        KeepState.NotAdvised => Rich.Plain(voice.Words["compare.keep.not-advised"]),
        KeepState.OutOfReach => Rich.Plain(voice.Words["compare.keep.out-of-reach"]),
        _ => Rich.Nothing,
    };

    private Rich Ready()
    {
        var total = comparison.Differences.Find(FigureKind.Total)!;
        if (total is not { First: { } one, Second: { } other })
        {
            return Rich.Say(voice, "compare.ready.unknown", ("kitchen", Second.Name), ("why", cells.WhyUnknown(total)));
        }

        var measure = Measure.Of(FigureKind.Total, voice.Measures);
        var steps = measure.Steps(one, other);
        return steps == 0
            ? Rich.Say(voice, "compare.ready.same", ("second", Second.Name))
            : Rich.Say(voice, "compare.ready.moved", ("by", Moved(steps < 0 ? "compare.sooner" : "compare.later", measure.Size(steps))), ("second", Second.Name));
    }

    private List<Rich> Things()
    {
        var things = new List<Rich>();
        if (Parts() is { } parts)
        {
            things.Add(parts);
        }

        foreach (var id in comparison.Steps)
        {
            var step = comparison.Step(id);
            if (step.Kind is StepKind.Bulk or StepKind.Proof)
            {
                things.AddRange(Rising(step));
            }
            else if (step.Kind == StepKind.Bake)
            {
                things.AddRange(Oven(id));
            }
        }

        return things;
    }

    /// <summary>How warm the free lines go in, where it is another warmth than in the first kitchen.</summary>
    private Rich? Parts()
    {
        if (Second.Answer is not { } answer || Second.MixOfDough is not { } mix)
        {
            return null;
        }

        var names = cells.NamesOf(answer.Lines);
        if (answer.Ice is { } ice)
        {
            return Rich.Say(voice, "compare.thing.ice", ("names", names), ("ice", new Bit(Show.Mass(ice.Likely, voice.Measures), BitKind.Moved, ice.Likely.Grams, "second.solve.0.iceGrams")));
        }

        var warmth = answer.Warmth!.Value.Likely;
        string Bare(double celsius) => voice.Degrees(Temperature.FromCelsius(celsius), asked: true);
        var were = answer.Lines
            .Select(line => comparison.Differences.Find(FigureKind.GoesIn, Request.LineOf(mix.Component, line))?.First)
            .OfType<double>().Select(Bare).Distinct().ToList();
        if (were is [var only] && only == Bare(warmth.Celsius))
        {
            return null;
        }

        Bit now = new(voice.Text(warmth, "asked"), BitKind.Moved, warmth.Celsius, "second.solve.0.celsius");
        return were.Count == 0
            ? Rich.Say(voice, "compare.thing.parts-new", ("names", names), ("now", now))
            : Rich.Say(voice, "compare.thing.parts", ("names", names), ("now", now), ("was", Not(voice.List(were))));
    }

    private IEnumerable<Rich> Rising(RehearsedStep step)
    {
        var measure = Measure.Of(FigureKind.Minutes, voice.Measures);
        if (comparison.Differences.Find(FigureKind.Minutes, step.Id) is not { First: { } one, Second: { } other }
            || measure.Steps(one, other) is var steps && Math.Abs(steps) < WorthSaying)
        {
            return [];
        }

        var by = Moved(steps > 0 ? "compare.more" : "compare.less", measure.Size(steps));
        return [Rich.Say(voice, "compare.thing.time", ("step", StepName.Of(step, voice)), ("by", by))];
    }

    private IEnumerable<Rich> Oven(string id) =>
        First.Rehearsal.FindStep(id)?.Dial is { } one && Second.Rehearsal.FindStep(id)?.Dial is { } other && one.Here != other.Here
            ? [Rich.Say(voice, "compare.thing.oven", ("now", new Bit(voice.Dial(other.Here), BitKind.Moved)), ("was", Not(voice.Dial(one.Here, unit: false))))]
            : [];

    private Rich Untouched(Rehearsal untouched)
    {
        var said = Risen(untouched);
        return untouched.Steps.FirstOrDefault(step => step is { Time: null, SettlesAt: not null }) is { } stuck
            ? Rich.Say(voice, "compare.untouched.stuck", ("said", said), ("step", StepName.Of(stuck, voice)), ("temperature", Show.Temperature(stuck.SettlesAt!.Value, voice.Measures)))
            : said;
    }

    private Rich Risen(Rehearsal untouched)
    {
        var names = cells.NamesOf(Second.Asked.Request.Free);
        var dough = DoughOf(untouched, null);
        if (untouched.Steps.FirstOrDefault(step => step.Kind is StepKind.Bulk or StepKind.Proof) is not { } rise)
        {
            return Rich.Say(voice, "compare.untouched", ("names", names), ("dough", dough));
        }

        var name = StepName.Of(rise, voice);
        return rise.Time is { } time
            ? Rich.Say(
                voice,
                rise.Cue is null ? "compare.untouched.rise" : "compare.untouched.rise-cue",
                ("names", names), ("dough", dough), ("step", name), ("cue", new Bit(rise.Cue ?? "", BitKind.Cue)),
                ("time", new Bit(Show.Duration(time.Likely), BitKind.Strong)), ("range", voice.Range(time.Low, time.High)))
            : Rich.Say(voice, "compare.untouched.never", ("names", names), ("dough", dough), ("step", name));
    }

    private Bit DoughOf(Rehearsal rehearsal, string? side) =>
        rehearsal.Components.LastOrDefault(part => part.Kind == ComponentKind.Dough) is { Mixed: { } mixed } dough
            ? new(Show.Temperature(mixed.Likely, voice.Measures), BitKind.Strong, mixed.Likely.Celsius, side is null ? null : $"{side}.components.{dough.Id}.mixedCelsius")
            : new(voice.Words["not-known"], BitKind.Strong);

    private Bit WasDough() => Not(First.Rehearsal.DoughMixed() is { } mixed ? voice.Degrees(mixed) : voice.Words["not-known"]);

    private Bit Moved(string key, string time) => new(voice.Say(key, ("time", time)), BitKind.Moved);

    private Bit Not(string what) => new(voice.Say("compare.not", ("what", what)), BitKind.Was);
}

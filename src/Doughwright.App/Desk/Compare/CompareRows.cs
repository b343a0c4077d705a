using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Differences;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Compare;

/// <summary>Makes the rows of the table of two kitchens, in the order of the method.</summary>
internal sealed class CompareRows
{
    private readonly Comparison comparison;
    private readonly Voice voice;
    private readonly CellMaker cells;
    private readonly Because because;

    public CompareRows(Comparison comparison, Voice voice)
    {
        (this.comparison, this.voice) = (comparison, voice);
        cells = new(comparison, voice);
        because = new(voice, comparison.Second.Asked.Request.Dough is { } dough ? voice.Text(dough, "written") : null);
    }

    /// <summary>Names of the steps that take the time the author wrote, the same in both: they have no row.</summary>
    public IReadOnlyList<string> LeftOut => [.. comparison.Steps.Where(IsPlain).Select(id => StepName.Of(comparison.Step(id), voice))];

    public IReadOnlyList<CompareRow> All() =>
    [
        .. Row(FigureKind.Boils, "", voice.Words["compare.row.boils"]),
        .. comparison.Steps.SelectMany(OfStep),
        .. Row(FigureKind.Total, "", voice.Words["compare.row.total"]),
        .. Row(FigureKind.Hands, "", voice.Words["compare.row.hands"]),
    ];

    private IEnumerable<CompareRow> OfStep(string id)
    {
        var step = comparison.Step(id);
        var name = StepName.Of(step, voice);
        string Named(string key) => voice.Say(key, ("step", name), ("part", PartName(step.Component)));
        return step.Kind switch
        {
            StepKind.Scald when !step.IsCooked => [.. Row(FigureKind.Mixed, step.Component, Named("compare.row.poured")), .. Lasting(step, name)],
            StepKind.Mix =>
            [
                .. GoesIn(step),
                .. Row(FigureKind.Start, id, Named("compare.row.begins")),
                .. Lasting(step, name),
                .. AfterMixing(step, Named),
            ],
            StepKind.Bulk => [.. Lasting(step, name), .. Row(FigureKind.EndTemperature, id, Named("compare.row.dough-after"))],
            StepKind.Preheat when step.IsAdded => Row(FigureKind.Start, id, Named("compare.row.oven-on")),
            StepKind.Warm when step.IsAdded => Row(FigureKind.Start, id, name),
            StepKind.Bake => [.. Lasting(step, name), .. Row(FigureKind.EndTemperature, id, Named("compare.row.core-after"))],
            _ => Lasting(step, name),
        };
    }

    /// <summary>A dough that is mixed more than once has a temperature after each: only after the last is it mixed.</summary>
    private IEnumerable<CompareRow> AfterMixing(RehearsedStep mix, Func<string, string> named)
    {
        var mixes = comparison.Steps.Select(comparison.Step).Where(step => step.Kind == StepKind.Mix && step.Component == mix.Component).ToArray();
        return mixes.Length == 1 ? Row(FigureKind.Mixed, mix.Component, named("compare.row.mixed"))
            : mixes[^1].Id == mix.Id ? Row(FigureKind.Mixed, mix.Component, named("compare.row.mixed-in"))
            : Row(FigureKind.EndTemperature, mix.Id, named("compare.row.mixed-in"));
    }

    private IEnumerable<CompareRow> Lasting(RehearsedStep step, string name) =>
        IsPlain(step.Id) ? [] : Row(FigureKind.Minutes, step.Id, name, step.Cue);

    /// <summary>Whether the author's own time stands in both, so that nothing can be said of it.</summary>
    private bool IsPlain(string id) =>
        comparison.Differences.Find(FigureKind.Minutes, id) is { First: not null, By: 0 } && comparison.Step(id) is { Basis: Basis.Stated, IsAdded: false };

    /// <summary>How warm the parts made beforehand go in, and what is free; those that go alike share a row.</summary>
    private IEnumerable<CompareRow> GoesIn(RehearsedStep mix)
    {
        var free = comparison.Second.Asked.Request.Free.Concat(comparison.First.Asked.Request.Free).ToList();
        var lines = comparison.First.Rehearsal.Formula.Components.First(part => part.Id == mix.Component).Lines
            .Where(line => line.UsesComponent is not null || (free.Contains(line.Id) && mix.Id == comparison.First.MixOfDough?.Id));
        var measure = Measure.Of(FigureKind.GoesIn, voice.Measures);
        string? Shown(double? value) => value is { } celsius ? measure.Text(celsius) : null;
        return lines
            .Select(line => (line.Name, Difference: comparison.Differences.Find(FigureKind.GoesIn, Request.LineOf(mix.Component, line.Id))))
            .Where(line => line.Difference is not null)
            .GroupBy(line => (Shown(line.Difference!.First), Shown(line.Difference.Second)))
            .SelectMany(alike => Row(alike.First().Difference, voice.Say(alike.Count() == 1 ? "compare.row.goes-in" : "compare.row.go-in", ("names", alike.Select(line => line.Name)))));
    }

    private IEnumerable<CompareRow> Row(FigureKind kind, string of, string name, string? cue = null) =>
        Row(comparison.Differences.Find(kind, of), name, cue);

    private IEnumerable<CompareRow> Row(Difference? difference, string name, string? cue = null)
    {
        if (difference is null or { First: null, Second: null, FirstUnknown: Unknown.NotKnown, SecondUnknown: Unknown.NotKnown, Figure.Kind: FigureKind.Mixed or FigureKind.GoesIn or FigureKind.EndTemperature })
        {
            return [];
        }

        var (first, second) = (cells.Of(comparison.First, difference, "first"), cells.Of(comparison.Second, difference, "second"));
        if (difference.First is not { } one || difference.Second is not { } other)
        {
            return [new(Capital.Of(name), cue, first, second, "", false, because.Sentence(cells.WhyUnknown(difference)))];
        }

        var measure = Measure.Of(difference.Figure.Kind, voice.Measures);
        var steps = measure.Steps(one, other);
        var words = because.Of(difference, measure, steps);
        if (words.Length == 0 && steps == 0)
        {
            words = Kept(difference);
        }

        return [new(Capital.Of(name), cue, first, second, steps == 0 ? "" : measure.Difference(steps), steps == 0, words)];
    }

    /// <summary>Why a dough is as warm as at home, where it is kept so.</summary>
    private string Kept(Difference difference) =>
        difference.Figure.Kind == FigureKind.Mixed && comparison.Second.Answer is { Warmth: not null } answer && difference.Figure.Of == comparison.Second.MixOfDough?.Component
            ? voice.Say("compare.kept-by", ("names", cells.NamesOf(answer.Lines)))
            : "";

    private string PartName(string component) => comparison.First.Rehearsal.Formula.Components.FirstOrDefault(part => part.Id == component)?.Name ?? component;
}

using Doughwright.App.Desk.Compare;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Differences;
using Doughwright.Engine.Sides;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text.Sides;

/// <summary>What the differences of two recipes come to in a kitchen, in words: the same in a terminal and on the desk.</summary>
/// <param name="because">Says what moved a figure; null where that was not worked out.</param>
internal sealed class ComesWords(Consequences come, Voice voice, BecauseWords? because = null)
{
    /// <summary>Weights and shares first, then the run in the order of the method.</summary>
    public IReadOnlyList<ComesRow> Rows() =>
    [
        .. come.Formulas.Select(Row),
        .. Steps().SelectMany(OfStep),
        .. Row(FigureKind.Total, "", voice.Words["sides.row.total"]),
        .. Row(FigureKind.Hands, "", voice.Words["sides.row.hands"]),
    ];

    /// <summary>Whose measurements both went by, and how the bakes were worked out.</summary>
    public IEnumerable<string> Notes()
    {
        if (come.By != Tested.Each)
        {
            yield return voice.Words[come.By == Tested.First ? "sides.by-first" : "sides.by-second"];
        }

        if (come.First.HasComputedBake || come.Second.HasComputedBake)
        {
            yield return voice.Words["sides.along-radius"];
        }
    }

    /// <summary>What "because" means here, and where it cannot be told.</summary>
    public IEnumerable<string> NotesOfCauses(IReadOnlyList<ComesRow> rows)
    {
        yield return voice.Words["sides.because-said"];
        if (rows.Any(row => row.Because.IsMostlyTogether))
        {
            yield return voice.Words["sides.because-much"];
        }
    }

    private ComesRow Row(FormulaDifference difference)
    {
        var isMass = difference.Figure is FormulaFigure.Dough or FormulaFigure.Flour;
        string Said(double? value) => value is not { } known ? voice.Words["not-known"] : isMass ? Show.Mass(Mass.FromGrams(known), voice.Measures) : voice.Text(Percent.FromValue(known));
        var (one, other) = (Said(difference.First), Said(difference.Second));
        var by = difference is { First: { } first, Second: { } second }
            ? isMass ? SignedBy.Grams(first, second, voice) : SignedBy.Points(first, second, voice)
            : "";
        return new(voice.Member(difference.Figure), new(one), new(other), by, one == other, $"formula.{Name(difference.Figure)}", difference.First, difference.Second)
        {
            Because = one == other ? WhyMoved.Nothing : because?.Of(difference) ?? WhyMoved.Nothing,
        };
    }

    /// <summary>Ids of both, in order: those that only the second has stand after the one they follow there.</summary>
    private IReadOnlyList<RehearsedStep> Steps()
    {
        var steps = come.First.Steps.ToList();
        var after = -1;
        foreach (var step in come.Second.Steps)
        {
            var at = steps.FindIndex(known => known.Id == step.Id);
            if (at < 0)
            {
                at = after + 1;
                steps.Insert(at, step);
            }

            after = at;
        }

        return steps;
    }

    private IEnumerable<ComesRow> OfStep(RehearsedStep step)
    {
        var name = StepName.Of(step, voice);
        string Named(string key) => voice.Say(key, ("step", name), ("part", PartOf(step.Component)));
        return step.Kind switch
        {
            StepKind.Scald => [.. Row(FigureKind.Mixed, step.Component, Named("sides.row.poured")), .. Row(FigureKind.Minutes, step.Id, name)],
            StepKind.Mix =>
            [
                .. Row(FigureKind.Start, step.Id, Named("sides.row.begins")),
                .. Row(FigureKind.EndTemperature, step.Id, Named("sides.row.mixed")),
            ],
            StepKind.Bulk => [.. Row(FigureKind.Minutes, step.Id, name), .. Row(FigureKind.EndTemperature, step.Id, Named("sides.row.dough-after"))],
            StepKind.Bake => [.. Row(FigureKind.Minutes, step.Id, name), .. Row(FigureKind.EndTemperature, step.Id, Named("sides.row.core"))],
            _ => Row(FigureKind.Minutes, step.Id, name).Where(row => step.Kind == StepKind.Proof || !row.IsSame),
        };
    }

    private IEnumerable<ComesRow> Row(FigureKind kind, string of, string name)
    {
        if (come.Find(kind, of) is not { } difference || difference is { First: null, Second: null, FirstUnknown: not Unknown.NeverEnds, SecondUnknown: not Unknown.NeverEnds })
        {
            return [];
        }

        var measure = Measure.Of(kind, voice.Measures);
        var (one, other) = (Cell(come.First, difference, difference.First, difference.FirstUnknown, measure), Cell(come.Second, difference, difference.Second, difference.SecondUnknown, measure));
        var steps = difference is { First: { } first, Second: { } second } ? measure.Steps(first, second) : (double?)null;
        return
        [
            new(Capital.Of(name), one, other, steps is { } by and not 0 ? measure.Difference(by) : "", steps == 0, $"run.{Name(kind)}{(of.Length > 0 ? "." : "")}{of}", difference.First, difference.Second)
            {
                Because = steps is null or 0 ? WhyMoved.Nothing : because?.Of(difference, measure) ?? WhyMoved.Nothing,
            },
        ];
    }

    private SideCell Cell(Rehearsal rehearsal, Difference difference, double? value, Unknown? why, Measure measure)
    {
        if (value is not { } known)
        {
            return new(voice.Words[why switch { Unknown.NotThere => "sides.none", Unknown.NeverEnds => "compare.unknown.never-ends", _ => "not-known" }]);
        }

        var figure = difference.Figure;
        Estimate<Duration>? time = figure.Kind switch
        {
            FigureKind.Minutes => rehearsal.FindStep(figure.Of)?.Time,
            FigureKind.Total => rehearsal.Total,
            _ => null,
        };
        var range = time is { } estimate ? voice.Range(estimate.Low, estimate.High) : null;
        return new(measure.Text(known), range is null || range == Show.DurationColumn(Duration.FromMinutes(known)) ? null : range);
    }

    private string PartOf(string id) =>
        (come.First.Recipe.FindComponent(id) ?? come.Second.Recipe.FindComponent(id))?.Name ?? id;

    private static string Name(Enum member) => Json.JsonText.Name(member);
}

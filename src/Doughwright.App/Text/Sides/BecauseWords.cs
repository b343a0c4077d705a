using Doughwright.App.Desk.Compare;
using Doughwright.Engine.Rehearsals.Differences;
using Doughwright.Engine.Sides;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text.Sides;

/// <summary>What moved a figure from one recipe to another, in words: the shares of the engine, never a cause that was not computed.</summary>
internal sealed class BecauseWords(Causes causes, SideWords words, Voice voice)
{
    /// <summary>Causes that a cell can hold.</summary>
    private const int MostTold = 4;

    public WhyMoved Of(FormulaDifference difference)
    {
        var measure = difference.Figure is FormulaFigure.Dough or FormulaFigure.Flour ? Measure.Grams(voice.Measures) : Measure.Points;
        return difference is { First: { } first, Second: { } second } ? Said(causes.Of(difference.Figure), measure, measure.Steps(first, second)) : WhyMoved.Nothing;
    }

    public WhyMoved Of(Difference difference, Measure measure) =>
        difference is { First: { } first, Second: { } second } ? Said(causes.Of(difference.Figure), measure, measure.Steps(first, second)) : WhyMoved.Nothing;

    /// <param name="total">The difference as shown, in steps of the measure: what is told adds up to it.</param>
    private WhyMoved Said(IReadOnlyList<Cause> all, Measure measure, double total)
    {
        var shown = measure.ShareOut([.. all.Select(cause => cause.By)], total);
        var told = all.Zip(shown).Where(pair => pair.Second != 0).ToList();
        if (told is [{ First.Difference: { } only }])
        {
            return new(voice.Say("compare.because", ("words", words.NameOf(only))), false);
        }

        var together = told.Where(pair => pair.First.Difference is null).Select(pair => pair.Second).DefaultIfEmpty(0).Sum();
        var alone = told.Where(pair => pair.First.Difference is not null).ToList();
        var rest = alone.Skip(MostTold).ToList();
        // As they are shown, so that a reader sees that it is so.
        var outweighs = together != 0 && alone.All(pair => Math.Abs(pair.Second) < Math.Abs(together));
        string[] parts =
        [
            .. outweighs ? [voice.Say("sides.because.together-most", ("by", measure.Difference(together)))] : Array.Empty<string>(),
            .. alone.Take(MostTold).Select(pair => voice.Say("compare.part", ("mover", words.NameOf(pair.First.Difference!)), ("by", measure.Difference(pair.Second)))),
            .. rest.Count == 0 ? [] : new[] { voice.Say("sides.because.more", ("count", rest.Count), ("by", measure.Difference(rest.Sum(pair => pair.Second)))) },
            .. together == 0 || outweighs ? [] : new[] { voice.Say("sides.because.together", ("by", measure.Difference(together))) },
        ];
        return parts.Length == 0 ? WhyMoved.Nothing : new(voice.Say("compare.because", ("words", string.Join(voice.Words["list-comma"], parts))), outweighs);
    }
}

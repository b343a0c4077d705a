using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Differences;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Compare;

/// <summary>Makes the cells of the table: the figure of one kitchen, its range, and why there is none.</summary>
internal sealed class CellMaker(Comparison comparison, Voice voice)
{
    /// <param name="side">"first" or "second": stands before the place of the figure in the command line's JSON.</param>
    public CompareCell Of(Side kitchen, Difference difference, string side)
    {
        var (value, why) = side == "first" ? (difference.First, difference.FirstUnknown) : (difference.Second, difference.SecondUnknown);
        if (value is not { } known)
        {
            return new(Rich.Plain(voice.Words[KeyOf(why!.Value)]), []);
        }

        var figure = difference.Figure;
        var text = Measure.Of(figure.Kind, voice.Measures).Text(known);
        var shown = figure.Kind == FigureKind.Start && known < 0
            ? Rich.Say(voice, "compare.before", ("time", new Bit(Show.Duration(Duration.FromMinutes(-known)), BitKind.Plain, known, Place(side, figure, kitchen))))
            : new Bit(text, BitKind.Plain, known, Place(side, figure, kitchen));
        return new(shown, [.. Under(kitchen, figure, side)]);
    }

    /// <summary>Why there is no difference to tell: what a step settles at, or that it is only needed in one kitchen.</summary>
    public string WhyUnknown(Difference difference)
    {
        if (difference.FirstUnknown == Unknown.NotThere || difference.SecondUnknown == Unknown.NotThere)
        {
            var there = difference.FirstUnknown == Unknown.NotThere ? comparison.Second : comparison.First;
            return voice.Say("compare.only-there", ("kitchen", there.Name));
        }

        var never = difference.SecondUnknown == Unknown.NeverEnds ? comparison.Second : difference.FirstUnknown == Unknown.NeverEnds ? comparison.First : null;
        return never?.Rehearsal.FindStep(difference.Figure.Of)?.SettlesAt is { } settles
            ? voice.Say("compare.settles", ("kitchen", never.Name), ("temperature", Show.Temperature(settles, voice.Measures)))
            : NoEnd();
    }

    /// <summary>"Scald and Potato".</summary>
    public string NamesOf(IReadOnlyList<string> lines) => voice.List(lines.Select(NameOfLine));

    private string NameOfLine(string line) =>
        comparison.Second.MixOfDough is { } mix
        && comparison.Second.Rehearsal.Formula.Components.First(part => part.Id == mix.Component).Lines.FirstOrDefault(one => one.Id == line) is { } known ? known.Name : line;

    /// <summary>Which step keeps what follows from being told, where one does.</summary>
    private string NoEnd()
    {
        foreach (var side in new[] { comparison.Second, comparison.First })
        {
            if (side.Rehearsal.Steps.FirstOrDefault(step => step.Time is null) is { } step)
            {
                return voice.Say(
                    step.SettlesAt is null ? "compare.step-not-known" : "compare.step-never-ends",
                    ("kitchen", side.Name), ("step", StepName.Of(step, voice)));
            }
        }

        return "";
    }

    private IEnumerable<Rich> Under(Side kitchen, Figure figure, string side)
    {
        var step = kitchen.Rehearsal.FindStep(figure.Of);
        var time = figure.Kind switch { FigureKind.Minutes => step?.Time, FigureKind.Total => kitchen.Rehearsal.Total, _ => null };
        if (time is { } estimate && RangeOf(estimate, figure.Kind == FigureKind.Total ? $"{side}.totalMinutes" : $"{side}.steps.{figure.Of}.minutes") is { } range)
        {
            yield return range;
        }

        if (figure.Kind == FigureKind.GoesIn && kitchen.Answer is { Ice: { } ice, Lines: var iced } && iced.Any(line => figure.Of == Request.LineOf(kitchen.MixOfDough?.Component ?? "", line)))
        {
            yield return Rich.Say(voice, "compare.iced", ("ice", new Bit(Show.Mass(ice.Likely, voice.Measures), BitKind.Plain, ice.Likely.Grams, $"{side}.solve.0.iceGrams")));
        }

        if (figure.Kind == FigureKind.Minutes && step?.Dial is { } dial)
        {
            yield return new Bit(voice.Say("compare.at-dial", ("dial", voice.Dial(dial.Here))), BitKind.Plain);
        }
    }

    /// <summary>"1:33 to 1:57"; null where the range says no more than the figure.</summary>
    private Rich? RangeOf(Estimate<Duration> time, string place)
    {
        string Column(Duration duration) => Show.DurationColumn(duration);
        Bit low = new(Column(time.Low), BitKind.Plain, time.Low.Minutes, place + "Low");
        return time.High is not { } high
            ? Rich.Say(voice, "range-open", ("low", low))
            : Column(time.Low) == Column(high)
            ? null
            : Rich.Say(voice, "range", ("low", low), ("high", new Bit(Column(high), BitKind.Plain, high.Minutes, place + "High")));
    }

    /// <summary>Where a figure stands in the command line's JSON; null where it does not.</summary>
    private static string? Place(string side, Figure figure, Side kitchen) => figure.Kind switch
    {
        FigureKind.Minutes => $"{side}.steps.{figure.Of}.minutes",
        FigureKind.Start => $"{side}.steps.{figure.Of}.startMinutes",
        FigureKind.StartTemperature => $"{side}.steps.{figure.Of}.startCelsius",
        FigureKind.EndTemperature => $"{side}.steps.{figure.Of}.endCelsius",
        FigureKind.Mixed => $"{side}.components.{figure.Of}.mixedCelsius",
        FigureKind.GoesIn when kitchen.Answer is { Warmth: not null } answer && figure.Of == Request.LineOf(kitchen.MixOfDough?.Component ?? "", answer.Lines[0]) => $"{side}.solve.0.celsius",
        FigureKind.Total => $"{side}.totalMinutes",
        FigureKind.Hands => $"{side}.handsMinutes",
        FigureKind.Boils => $"{side}.kitchen.boilsCelsius",
        _ => null,
    };

    private static string KeyOf(Unknown why) => $"compare.unknown.{Voice.Kebab(why.ToString())}";
}

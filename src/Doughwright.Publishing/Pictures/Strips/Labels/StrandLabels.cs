using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips.Marks;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>What stands at the strands of the wide strip: name and weight, the tens of degrees, the steps, how warm it goes in.</summary>
internal static class StrandLabels
{
    /// <summary>Notches whose figures would come closer than this keep the notch only.</summary>
    private const double BetweenNotches = 15;

    private const double Longest = 320;
    private const double OverNotches = 21;
    private const double OverStrand = 8;
    private const double UnderStrand = 15;
    private const double BeforeJoin = 40;

    /// <summary>Where a strand falls close over the words of a step, they stand so much lower.</summary>
    private const double Lower = 6;

    /// <summary>Words of a step may run on so far under the next, whose words then begin behind them.</summary>
    private const double IntoNext = 30;

    public static void Draw(Sheet sheet)
    {
        foreach (var shape in sheet.Strands)
        {
            Name(sheet, shape);
            Joining(sheet, shape);
        }

        foreach (var shape in sheet.Strands)
        {
            Notches(sheet, shape);
            Steps(sheet, shape);
        }
    }

    private static void Name(Sheet sheet, StrandShape shape)
    {
        var (name, value) = NameOf(sheet, shape);
        if (shape.Strand.Manner is Manner.Poured or Manner.Thread && BesideShort(sheet, shape, name, value))
        {
            return;
        }

        double[] lines = [NameY(sheet, shape), sheet.Bench - shape.Lane.Top - 36, sheet.Bench - shape.Lane.Bottom + 30];
        // Behind a slash where there is no room before it; higher, or under the strand, where another name stands; shorter where the room ends.
        foreach (var room in (double[])[Longest, 190, 130])
        {
            foreach (var (line, x) in lines.SelectMany(line => Starts(sheet, NameX(sheet, shape), sheet.Place(shape.Strand.JoinStart)).Select(x => (line, x))))
            {
                if (sheet.Placer.PutPair(x, line, name, value, Math.Min(room, sheet.Frame.Width - x)))
                {
                    var end = x + Math.Min(room, Type.Head.Width(name) + 7 + Type.Value.Width(value));
                    sheet.Named[shape.Strand.Component] = new(x, end, line);
                    return;
                }
            }
        }

        // A strand shorter than its name, with an edge close behind it.
        BesideShort(sheet, shape, name, value);
    }

    /// <summary>What hangs over the piece only for as long as it is stirred has its name at its left, like a wash from its packet, or behind the step that pours it.</summary>
    private static bool BesideShort(Sheet sheet, StrandShape shape, string name, string mass)
    {
        var value = shape.Strand.Manner == Manner.Poured ? sheet.Words.Say("strip-poured", ("mass", mass)) : mass;
        var (left, right) = (sheet.Place(shape.Strand.Start) - 6, sheet.Place(shape.Strand.JoinEnd) + 6);
        foreach (var up in (double[])[0, 12, 24, 36])
        {
            var y = sheet.Bench - shape.Lane.Top + 4 - up;
            var width = Type.Head.Width(name);
            if (sheet.Placer.PutLines(left, [(Type.Head, y, name), (Type.Value, y + 15, value)], Anchor.End))
            {
                sheet.Named[shape.Strand.Component] = new(left - width, left, y);
                return true;
            }

            if (sheet.Placer.PutLines(right, [(Type.Head, y, name), (Type.Value, y + 15, value)]))
            {
                sheet.Named[shape.Strand.Component] = new(right, right + width, y);
                return true;
            }
        }

        return false;
    }

    private static (string Name, string Value) NameOf(Sheet sheet, StrandShape shape)
    {
        var strand = shape.Strand;
        var mass = sheet.Words.Text(Engine.Quantities.Mass.FromGrams(strand.Track.Grams(strand.Start)));
        var mixed = sheet.Plan.Rehearsal.Components.FirstOrDefault(component => component.Id == strand.Component)?.Mixed;
        return (sheet.Plan.NameOf(strand.Component), strand.Track.Strand.Kind == ComponentKind.Scald && mixed is { } poured
            ? sheet.Words.Say("strip-mass-at", ("mass", mass), ("warmth", poured.Likely))
            : mass);
    }

    private static double NameX(Sheet sheet, StrandShape shape) => Math.Max(2, sheet.Place(shape.Strand.Start));

    private static double NameY(Sheet sheet, StrandShape shape) =>
        sheet.Bench - shape.Lane.Top - (StrandMarks.Notches(shape, sheet.Words.Voice.Measures).Any() ? OverNotches : OverStrand);

    /// <summary>How warm it is when it is taken up, and what it weighs then if that is another figure than at its start.</summary>
    private static void Joining(Sheet sheet, StrandShape shape)
    {
        var strand = shape.Strand;
        if (strand.Manner == Manner.Alone || strand.Track.Warmth(Math.Min(strand.JoinStart, strand.Track.End)) is not { } warmth)
        {
            return;
        }

        // What hangs higher falls past the end of a lower strand, so the figure there stands before the fall.
        var isBelow = sheet.Strands.Any(other => other.Strand.Joins == strand.Joins && other.Lane.Height > shape.Lane.Height);
        var (x, y) = (isBelow ? sheet.Place(shape.FallStart) + 6 : sheet.Place(strand.JoinStart) - 4, sheet.Bench - shape.Lane.Top - 6);
        var before = sheet.Words.Text(Engine.Quantities.Mass.FromGrams(strand.Track.Grams(strand.Start)));
        var after = sheet.Words.Text(Engine.Quantities.Mass.FromGrams(strand.Track.Grams(strand.JoinStart)));
        // A strand that rises into the one above it would run through its own figure: that stands before it leaves its lane, or under it.
        (double End, double Line)[] places = [(x, y), (sheet.Place(shape.FallStart) - 2, y), (sheet.Place(strand.JoinStart) - 4, sheet.Bench - shape.Lane.Bottom + UnderStrand)];
        _ = places.Any(place =>
            (after != before && sheet.Placer.PutLines(place.End, [(Type.Value, place.Line - 14, after), (Type.Key, place.Line, sheet.Words.Text(warmth))], Anchor.End))
            || sheet.Placer.Put(Type.Key, place.End, place.Line, sheet.Words.Text(warmth), Anchor.End));
    }

    private static void Notches(Sheet sheet, StrandShape shape)
    {
        var last = double.NegativeInfinity;
        foreach (var (minute, degrees) in StrandMarks.Notches(shape, sheet.Words.Voice.Measures))
        {
            var x = sheet.Place(minute);
            if (x - last >= BetweenNotches && x <= sheet.Place(shape.Strand.JoinStart) - BeforeJoin
                && sheet.Placer.Put(Type.Notch, x, sheet.Bench - shape.Top(minute) - 6, degrees.ToString(System.Globalization.CultureInfo.InvariantCulture), Anchor.Middle))
            {
                last = x;
            }
        }
    }

    private static void Steps(Sheet sheet, StrandShape shape)
    {
        var steps = StepsOf(sheet.Plan, shape).ToArray();
        var (y, free) = (sheet.Bench - shape.Lane.Bottom + UnderStrand, 2.0);
        for (var i = 0; i < steps.Length; i++)
        {
            var start = Math.Max(free, sheet.Place(steps[i].Start) + 2);
            var end = steps[i].End is null ? sheet.Frame.Width : i + 1 < steps.Length ? sheet.Place(steps[i + 1].Start) + IntoNext : Math.Max(sheet.Place(shape.Strand.JoinStart) - 12, start + 60);
            foreach (var (x, words) in Wordings(sheet, steps[i]).SelectMany(words => Starts(sheet, start, end).Select(x => (x, words))))
            {
                if (Type.Value.Width(words) <= end - x && (sheet.Placer.Put(Type.Value, x, y, words) || sheet.Placer.Put(Type.Value, x, y + Lower, words)))
                {
                    free = x + Type.Value.Width(words) + 8;
                    break;
                }
            }
        }
    }

    /// <summary>Where words may begin between two places: at the first, and behind every slash of a folded wait.</summary>
    private static IEnumerable<double> Starts(Sheet sheet, double from, double to) =>
        sheet.Frame.Time.Folds.Select(fold => FoldMarks.Middle(sheet.Frame.Time, fold) + FoldMarks.Reach).Where(x => x > from && x < to).Prepend(from);

    /// <summary>What is done to a part, and what of it never ends here.</summary>
    private static IEnumerable<PlannedStep> StepsOf(Plan plan, StrandShape shape) => plan.Steps.Where(step =>
        step.Step.Component == shape.Strand.Component && step.Start >= 0
        && (step.End is null || shape.Strand.Track.Strand.Stretches.Any(stretch => stretch.Step == step.Id)));

    private static IEnumerable<string> Wordings(Sheet sheet, PlannedStep step)
    {
        if (step.Step.SettlesAt is { } settles)
        {
            yield return sheet.Words.Say("strip-step-settles", ("step", sheet.Words.Name(step)), ("warmth", settles));
            yield return sheet.Words.Say("strip-step-settles", ("step", sheet.Words.ShortName(step)), ("warmth", settles));
        }

        yield return sheet.Words.Say("strip-step-time", ("step", sheet.Words.Name(step)), ("time", sheet.Words.Time(step)));
        yield return sheet.Words.Say("strip-step-time", ("step", sheet.Words.ShortName(step)), ("time", sheet.Words.Time(step)));
    }
}

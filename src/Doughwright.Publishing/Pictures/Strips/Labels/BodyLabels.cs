using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips.Marks;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>What stands at and in the dough: folds, growth, how warm it is, which part of it was weighed.</summary>
internal static class BodyLabels
{
    /// <summary>Text stands on warmth only up to this.</summary>
    private static readonly Temperature ReadableUpTo = Temperature.FromCelsius(28);

    /// <summary>The dough keeps labels off in uprights of this width.</summary>
    private const double Column = 10;

    /// <summary>So narrow where a strand leaves its lane.</summary>
    private const double Steep = 2;

    public static void Block(Sheet sheet)
    {
        foreach (var shape in sheet.Strands)
        {
            // A part that is cooked down grows thinner on its way; where it falls or rises into what takes it up, narrower uprights follow it.
            Block(sheet, shape, sheet.Place(shape.Strand.Start), sheet.Place(shape.FallStart), Column);
            Block(sheet, shape, sheet.Place(shape.FallStart), sheet.Place(shape.End), Steep);
        }

        foreach (var fold in sheet.Frame.Time.Folds)
        {
            var middle = FoldMarks.Middle(sheet.Frame.Time, fold);
            sheet.Placer.Forbid(new(middle - FoldMarks.Reach, 0, middle + FoldMarks.Reach, sheet.Bench + sheet.Drop + WideLayout.UnderBench));
        }

        if (sheet.Body is { } body)
        {
            var (start, end) = (sheet.Place(body.NoseStart), sheet.Place(body.End));
            for (var x = start; x < end; x += Column)
            {
                sheet.Placer.Block(new(x, sheet.Bench - body.Top(sheet.Frame.Time.Minute(x + (Column / 2))), Math.Min(end, x + Column), sheet.Bench));
            }
        }
    }

    private static void Block(Sheet sheet, StrandShape shape, double from, double to, double column)
    {
        for (var x = from; x < to; x += column)
        {
            var right = Math.Min(to, x + column);
            var (first, last) = (sheet.Frame.Time.Minute(x), sheet.Frame.Time.Minute(right));
            sheet.Placer.Block(new(
                x,
                sheet.Bench - Math.Max(shape.Top(first), shape.Top(last)),
                right,
                sheet.Bench - Math.Min(shape.Bottom(first), shape.Bottom(last))));
        }
    }

    public static void Folds(Sheet sheet, BodyShape body)
    {
        foreach (var step in sheet.Plan.OnBench)
        {
            foreach (var fold in step.Step.Events)
            {
                var minute = step.Start + fold.After.Likely.Minutes;
                var (x, y) = sheet.Frame.At(minute, body.Top(minute));
                sheet.Svg.Line("edge", x, y - 16, x, sheet.Bench);
                sheet.Placer.Forbid(new(x - 0.5, y - 16, x + 0.5, sheet.Bench));
                sheet.Placer.Put(Type.Head, x, y - 22, sheet.Words.Say("strip-fold"), Anchor.Middle);
            }
        }
    }

    public static void Draw(Sheet sheet, BodyShape body)
    {
        foreach (var step in sheet.Plan.OnBench.Where(step => step.End is not null))
        {
            Growth(sheet, body, step);
            Warmths(sheet, body, step);
        }

        if (sheet.Plan.OnBench.Where(step => step.Kind is StepKind.Bulk or StepKind.Proof or StepKind.Rest && step.End is not null).MaxBy(step => step.End - step.Start) is { } longest)
        {
            Weighed(sheet, body, longest);
        }
    }

    /// <summary>What was waited: beside the slash of a folded wait.</summary>
    public static void Waits(Sheet sheet)
    {
        foreach (var fold in sheet.Frame.Time.Folds)
        {
            var words = sheet.Words.Say("strip-wait", ("time", Duration.FromMinutes(fold.Minutes)));
            var x = FoldMarks.Middle(sheet.Frame.Time, fold) + FoldMarks.Reach + 2;
            foreach (var y in (double[])[sheet.Bench + 17, sheet.Bench + 34, .. new[] { 52.0, 68, 84, 100 }.Select(under => under + sheet.Lift)])
            {
                if (sheet.Placer.Put(Type.Value, x, y, words))
                {
                    break;
                }
            }
        }
    }

    private static void Growth(Sheet sheet, BodyShape body, PlannedStep step)
    {
        if (step.Kind == StepKind.Bulk && sheet.Words.Target(step) is { } times)
        {
            var (x, y) = sheet.Frame.At(step.EndOrStart, body.Top(step.EndOrStart));
            sheet.Placer.Put(Type.Key, x - 6, y - 6, sheet.Words.Say("strip-growth", ("times", times)), Anchor.End, overShapes: true);
        }
    }

    /// <summary>Right after the mix, and at the end of every rise.</summary>
    private static void Warmths(Sheet sheet, BodyShape body, PlannedStep step)
    {
        var y = sheet.Bench - 7;
        if (step.Kind == StepKind.Mix && Readable(body, step.EndOrStart) is { } mixed)
        {
            sheet.Placer.Put(Type.Figure, sheet.Place(step.EndOrStart) + 5, y, sheet.Words.Text(mixed), overShapes: true);
        }
        else if (step.Kind is StepKind.Bulk or StepKind.Proof && Readable(body, step.EndOrStart) is { } risen)
        {
            sheet.Placer.Put(Type.Figure, sheet.Place(step.EndOrStart) - 5, y, sheet.Words.Text(risen), Anchor.End, overShapes: true);
        }
    }

    private static Temperature? Readable(BodyShape body, double minute) => body.Warmth(minute) is { } warmth && warmth <= ReadableUpTo ? warmth : null;

    private static void Weighed(Sheet sheet, BodyShape body, PlannedStep step)
    {
        var (left, right) = (sheet.Place(step.Start), sheet.Place(step.EndOrStart));
        double At(double share) => sheet.Frame.Time.Minute(left + (share * (right - left)));
        // Where the middle of the words may lie, the best place first: a fold or a slash cuts through some of them.
        foreach (var share in (double[])[0.66, 0.72, 0.58, 0.5, 0.35, 0.8])
        {
            var at = At(share);
            var words = sheet.Words.Say("strip-weighed", ("mass", Mass.FromGrams(sheet.Plan.Body!.Grams(at))));
            if (Readable(body, at) is not null && body.Core(at) >= 40 && Type.Inside.Width(words) <= right - left - 20
                && sheet.Placer.Put(Type.Inside, sheet.Place(at), sheet.Bench - body.Core(at) + 14, words, Anchor.Middle, overShapes: true))
            {
                break;
            }
        }

        var gas = At(0.82);
        if (Readable(body, gas) is not null && body.Core(gas) >= 40 && body.Top(gas) - body.Core(gas) >= 20)
        {
            sheet.Placer.Put(Type.Inside, sheet.Place(gas), sheet.Bench - body.Core(gas) - 9, sheet.Words.Say("strip-gas"), Anchor.Middle, overShapes: true);
        }
    }
}

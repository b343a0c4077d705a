using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>Where marks of findings would like to stand on the wide strip: beside what is written of the thing, else over everything at its time.</summary>
internal static class WideMarkPlaces
{
    private const double TopRow = 14.3;

    public static IEnumerable<(double X, double Y)> Of(Sheet sheet, string[] place)
    {
        var (best, at) = Best(sheet, place);
        return best.Concat(InTopRows(sheet, at));
    }

    private static (IEnumerable<(double X, double Y)> Best, double At) Best(Sheet sheet, string[] place) => place switch
    {
        ["steps", var step, ..] when sheet.Plan.Find(step) is { } planned => (OfStep(sheet, planned), sheet.Place(planned.Start)),
        ["parts", var part, ..] => (OfPart(sheet, part), StartOf(sheet, part)),
        _ => ([], 0),
    };

    private static IEnumerable<(double X, double Y)> OfStep(Sheet sheet, PlannedStep step)
    {
        var x = sheet.Place(step.Start);
        if (sheet.Heads.FirstOrDefault(head => head.Step.Id == step.Id) is { } head)
        {
            return OfHead(sheet, head);
        }

        if (sheet.Plan.Washes.FirstOrDefault(wash => wash.Step.Id == step.Id) is { } washed)
        {
            return OfPart(sheet, washed.Component);
        }

        return sheet.Strands.FirstOrDefault(shape => shape.Strand.Component == step.Step.Component) is { } strand
            ? UnderStrand(sheet, strand, x)
            : [(x + 12, sheet.Bench + sheet.Drop + 88)];
    }

    /// <summary>Behind its name or under it, never past the next upright.</summary>
    private static IEnumerable<(double X, double Y)> OfHead(Sheet sheet, Head head)
    {
        var line = HeadLabels.LineOf(sheet, head);
        if (head.Row > 0)
        {
            return head.Name is null ? [] : [((head.IsLeft ? head.Left - 14 : head.Right + 14), line)];
        }

        (double X, double Y)[] below = [(head.X + 15, line + 36), (head.X + 15, line + 54), (head.X + 37, line + 36), (head.X + 15, line + 72)];
        return new[] { (X: head.Right + 14, Y: line) }.Concat(below).Where(place => place.X + 12 <= head.X + head.Width);
    }

    /// <summary>Under the strand where something is done to it, on the side of a slash on which that begins.</summary>
    private static IEnumerable<(double X, double Y)> UnderStrand(Sheet sheet, StrandShape strand, double x)
    {
        var under = sheet.Bench - strand.Lane.Bottom;
        return [(x + 12, under + 32), (x + 34, under + 32), (x + 12, under + 17), (x + 12, sheet.Bench - strand.Lane.Top - 8)];
    }

    private static IEnumerable<(double X, double Y)> OfPart(Sheet sheet, string part)
    {
        if (sheet.Strands.FirstOrDefault(shape => shape.Strand.Component == part) is { } strand)
        {
            var start = StartOf(sheet, part);
            var behind = sheet.Named.TryGetValue(part, out var name) && !IsFoldedBetween(sheet, start, name.Left)
                ? Enumerable.Range(0, 4).Select(i => (name.Right + 16 + (22 * i), name.Line + 1))
                : [];
            return behind.Concat(UnderStrand(sheet, strand, start));
        }

        if (sheet.Body is { } body && sheet.Plan.Washes.FirstOrDefault(wash => wash.Component == part) is { } washed)
        {
            var (x, y) = WashLabels.At(sheet, body, washed);
            var width = Math.Min(110, Type.Head.Width(washed.Name));
            return Enumerable.Range(0, 4).Select(i => (x - width - 14 - (22 * i), y));
        }

        return sheet.Plan.Mix is { } mix ? Enumerable.Range(0, 6).Select(i => (sheet.Place(mix.Start) - 42 - (22 * i), sheet.Bench - 53)) : [];
    }

    /// <summary>Where a part begins: its strand, its brush, else the mix that it goes straight into.</summary>
    private static double StartOf(Sheet sheet, string part) => Math.Max(0, sheet.Place(
        sheet.Strands.FirstOrDefault(shape => shape.Strand.Component == part)?.Strand.Start
        ?? sheet.Plan.Washes.FirstOrDefault(wash => wash.Component == part)?.Step.Start
        ?? sheet.Plan.Mix?.Start
        ?? 0));

    private static bool IsFoldedBetween(Sheet sheet, double from, double to) =>
        sheet.Frame.Time.Folds.Select(fold => sheet.Place(fold.From)).Any(fold => from < fold && fold < to);

    /// <summary>In the row over everything, at its time or as near as can be; when that is full, in the rows under it, wherever nothing is written.</summary>
    private static IEnumerable<(double X, double Y)> InTopRows(Sheet sheet, double at) =>
        from row in Enumerable.Range(0, (int)((sheet.Frame.Height - TopRow) / MarkLabels.Step))
        from x in MarkLabels.Around(at, 11, sheet.Frame.Width - 11).OrderBy(x => IsFoldedBetween(sheet, Math.Min(x, at), Math.Max(x, at)))
        select (x, TopRow + (row * MarkLabels.Step));
}

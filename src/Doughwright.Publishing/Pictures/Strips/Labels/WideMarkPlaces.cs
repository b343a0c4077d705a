namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>Where marks of findings would like to stand on the wide strip.</summary>
internal static class WideMarkPlaces
{
    public static IEnumerable<(double X, double Y)> Of(Sheet sheet, string[] place) => place switch
    {
        ["steps", var step, ..] when sheet.Plan.Find(step) is { } planned => OfStep(sheet, planned),
        ["parts", var part, ..] => OfPart(sheet, part),
        _ => [],
    };

    private static IEnumerable<(double X, double Y)> OfStep(Sheet sheet, Plans.PlannedStep step)
    {
        var x = sheet.Place(step.Start);
        if (sheet.Plan.Edges.Contains(step))
        {
            var next = sheet.Plan.Edges.Select(edge => sheet.Place(edge.Start)).FirstOrDefault(edge => edge > x + 1, sheet.Frame.Width);
            (double X, double Y)[] below = [(x + 15, 88), (x + 15, 106), (x + 37, 88), (x + 15, 124), (x, 32)];
            return HeadLabels.NameEnd(sheet, step) is { } end && end + 26 <= next ? [(end + 14, HeadLabels.NameLine), .. below] : below;
        }

        if (sheet.Plan.Washes.FirstOrDefault(wash => wash.Step.Id == step.Id) is { } washed)
        {
            return OfPart(sheet, washed.Component);
        }

        var strand = sheet.Strands.FirstOrDefault(shape => shape.Strand.Component == step.Step.Component);
        return strand is null
            ? [(x + 12, sheet.Bench + 88)]
            : [(x + 12, sheet.Bench - strand.Lane.Bottom + 32), (x + 34, sheet.Bench - strand.Lane.Bottom + 32), .. OfPart(sheet, strand.Strand.Component)];
    }

    private static IEnumerable<(double X, double Y)> OfPart(Sheet sheet, string part)
    {
        if (sheet.Strands.FirstOrDefault(shape => shape.Strand.Component == part) is { } strand)
        {
            var (x, y) = StrandLabels.NameEnd(sheet, strand);
            return Enumerable.Range(0, 4).Select(i => (x + 16 + (22 * i), y + 1));
        }

        if (sheet.Body is { } body && sheet.Plan.Washes.FirstOrDefault(wash => wash.Component == part) is { } washed)
        {
            var (x, y) = WashLabels.At(sheet, body, washed);
            var width = Math.Min(110, Type.Head.Width(washed.Name));
            return Enumerable.Range(0, 4).Select(i => (x - width - 14 - (22 * i), y));
        }

        if (sheet.Plan.Mix is { } mix)
        {
            var x = sheet.Place(mix.Start);
            return Enumerable.Range(0, 6).Select(i => (x - 42 - (22 * i), sheet.Bench - 53));
        }

        return [];
    }
}

using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>
/// Marks that belong to no time stand under the strip in a row of their own that says so: those of the recipe as a whole, and those of what the strip
/// cannot draw. On the scale of time they would tell an hour.
/// </summary>
internal sealed class MarkCorner
{
    private const double RowHeight = 23;
    private const double First = 13;

    /// <summary>Between what one row tells and the next thing in it.</summary>
    private const double Apart = 20;

    private readonly Dictionary<StripMark, (double X, int Row)> places = new(ReferenceEqualityComparer.Instance);
    private readonly List<(double X, int Row, string Name)> names = [];
    private readonly double width;
    private double x;
    private int row;

    private MarkCorner(Plan plan, StripWords words, IReadOnlyList<StripMark> marks, double width)
    {
        this.width = width;
        foreach (var group in marks.GroupBy(mark => NameOf(plan, mark.Place.Split('.'))).Where(group => group.Key is not null).OrderByDescending(group => group.Key == Whole))
        {
            Add(words.Say(group.Key!), [.. group]);
        }
    }

    /// <summary>What it takes under the strip.</summary>
    public double Height => names.Count == 0 ? 0 : (row + 1) * RowHeight;

    private const string Whole = "strip-marks-whole";

    public static MarkCorner Of(Plan plan, StripWords words, IReadOnlyList<StripMark> marks, double width) => new(plan, words, marks, width);

    /// <summary>Null for a mark that has a place in time.</summary>
    public (double X, double Y)? PlaceOf(Sheet sheet, StripMark mark) => places.TryGetValue(mark, out var place) ? (place.X, Line(sheet, place.Row)) : null;

    public void Name(Sheet sheet)
    {
        foreach (var (at, inRow, name) in names)
        {
            sheet.Placer.Put(Type.Value, at, Line(sheet, inRow), name);
        }
    }

    private double Line(Sheet sheet, int inRow) => sheet.Frame.Height - Height + (inRow * RowHeight) + First + 2;

    private void Add(string name, IReadOnlyList<StripMark> marks)
    {
        var named = Type.Value.Width(name) + 14;
        if (x > 0 && x + named + (MarkLabels.Step * marks.Count) > width)
        {
            (x, row) = (0, row + 1);
        }

        names.Add((x + 2, row, name));
        x += 2 + named;
        foreach (var mark in marks)
        {
            if (x + Marks.Flag.Reach > width)
            {
                (x, row) = (Marks.Flag.Reach + 2, row + 1);
            }

            places[mark] = (x, row);
            x += MarkLabels.Step;
        }

        x += Apart;
    }

    /// <summary>What the row says of a place; null for one with a place in time.</summary>
    private static string? NameOf(Plan plan, string[] place) => place switch
    {
        ["steps", var step, ..] => plan.Find(step) is { Start: >= 0 } ? null : "strip-marks-undrawn",
        ["parts", var part, ..] => plan.Mix is not null || plan.Strands.Any(strand => strand.Component == part) || plan.Washes.Any(wash => wash.Component == part) ? null : "strip-marks-undrawn",
        _ => Whole,
    };
}

namespace Doughwright.Publishing.Pictures.Drawing;

/// <summary>Where texts stand already. Planned at the larger type of a phone: what keeps apart there keeps apart everywhere.</summary>
/// <param name="width">Width of the picture; no text may leave it.</param>
internal sealed class LabelPlan(double width)
{
    private const double Ascent = 0.8;
    private const double Descent = 0.24;

    /// <summary>Distances of the base lines of two-line labels from their point, as <see cref="Svg.TwoLines"/> draws them, in sizes of type.</summary>
    private const double FirstBelow = 1.05;
    private const double FirstAbove = -1.65;
    private const double Second = 1.15;

    /// <summary>Two texts on one line are two texts.</summary>
    private const double Air = 6;

    private readonly List<Box> taken = [];

    /// <summary>A plan to try something on.</summary>
    public LabelPlan Copy()
    {
        var copy = new LabelPlan(width);
        copy.taken.AddRange(taken);
        return copy;
    }

    public static Box Line(double x, double y, string text, Lettering lettering, Anchor anchor = Anchor.Start)
    {
        var length = lettering.WidthOf(text);
        var left = x - (anchor switch { Anchor.End => length, Anchor.Middle => length / 2, _ => 0 });
        return new(left, y - (Ascent * lettering.PhoneSize), left + length, y + (Descent * lettering.PhoneSize));
    }

    /// <summary>Both lines in one size.</summary>
    public static Box TwoLines(double x, double y, string first, string second, bool above, Lettering firstLettering, Lettering secondLettering, Anchor anchor = Anchor.Start)
    {
        var size = firstLettering.PhoneSize;
        var one = Line(x, y + ((above ? FirstAbove : FirstBelow) * size), first, firstLettering, anchor);
        var two = Line(x, y + (((above ? FirstAbove : FirstBelow) + Second) * size), second, secondLettering, anchor);

        // Up to its point: the same label in smaller type stands nearer to it, and lies within.
        return new(Math.Min(one.Left, two.Left), Math.Min(one.Top, y), Math.Max(one.Right, two.Right), Math.Max(two.Bottom, y));
    }

    public bool IsFree(Box box)
    {
        var aired = box with { Left = box.Left - Air, Right = box.Right + Air };
        return box.Left >= 0 && box.Right <= width && !taken.Any(aired.Overlaps);
    }

    public void Take(Box box) => taken.Add(box);

    public void TakeAll(LabelPlan other) => taken.AddRange(other.taken[taken.Count..]);

    /// <summary>Takes the place if nothing stands there.</summary>
    public bool TryTake(Box box)
    {
        var free = IsFree(box);
        if (free)
        {
            Take(box);
        }

        return free;
    }

    public double Top => taken.Count == 0 ? 0 : taken.Min(box => box.Top);

    public double Bottom => taken.Count == 0 ? 0 : taken.Max(box => box.Bottom);
}

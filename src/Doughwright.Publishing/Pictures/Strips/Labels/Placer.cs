using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>
/// Writes labels where nothing is written yet. What comes first has the first choice; what finds no room is left out, and the table of the method
/// beside the picture has it.
/// </summary>
internal sealed class Placer(Svg svg, double width, double height)
{
    /// <summary>Between two texts on one line.</summary>
    private const double Apart = 3;

    /// <summary>Between a name and its value in one text.</summary>
    private const double PairGap = 7;

    private readonly List<Box> texts = [];
    private readonly List<Box> shapes = [];
    private readonly List<Box> lines = [];

    /// <summary>Keeps labels off something that is drawn.</summary>
    public void Block(Box shape) => shapes.Add(shape);

    /// <summary>Keeps off a line even those labels that may stand on what is drawn.</summary>
    public void Forbid(Box line) => lines.Add(line);

    /// <summary>Takes a place for a mark that is drawn by the caller; false when it is taken.</summary>
    public bool Take(Box box)
    {
        if (!IsFree(box, overShapes: false))
        {
            return false;
        }

        texts.Add(box);
        return true;
    }

    /// <summary>Writes a text when its place is free.</summary>
    /// <param name="overShapes">Whether it may stand on what is drawn.</param>
    public bool Put(Type type, double x, double y, string text, Anchor anchor = Anchor.Start, bool overShapes = false)
    {
        var box = type.Box(x, y, type.Width(text), anchor);
        if (!IsFree(box, overShapes))
        {
            return false;
        }

        texts.Add(box);
        svg.Text(type.Class, x, y, text, anchor);
        return true;
    }

    /// <summary>Writes lines under one another, all or none.</summary>
    public bool PutLines(double x, IReadOnlyList<(Type Type, double Y, string Text)> lines, Anchor anchor = Anchor.Start, bool overShapes = false)
    {
        var boxes = lines.Select(line => line.Type.Box(x, line.Y, line.Type.Width(line.Text), anchor)).ToArray();
        if (!boxes.All(box => IsFree(box, overShapes)))
        {
            return false;
        }

        texts.AddRange(boxes);
        foreach (var (type, y, text) in lines)
        {
            svg.Text(type.Class, x, y, text, anchor);
        }

        return true;
    }

    /// <summary>Writes a name and its value as one text when the place is free. The name is cut off where the room ends.</summary>
    public bool PutPair(double x, double y, string name, string value, double room)
    {
        if (Type.Head.Fit(name, room - PairGap - Type.Value.Width(value)) is not { } shown)
        {
            return false;
        }

        var box = Type.Head.Box(x, y, Type.Head.Width(shown) + PairGap + Type.Value.Width(value), Anchor.Start);
        if (!IsFree(box, overShapes: false))
        {
            return false;
        }

        texts.Add(box);
        svg.Pair(x, y, shown, value);
        return true;
    }

    private bool IsFree(Box box, bool overShapes) =>
        box.Left >= 0 && box.Top >= 0 && box.Right <= width && box.Bottom <= height
        && !texts.Exists(taken => new Box(taken.Left - Apart, taken.Top, taken.Right + Apart, taken.Bottom).Overlaps(box))
        && !lines.Exists(box.Overlaps)
        && (overShapes || !shapes.Exists(box.Overlaps));
}

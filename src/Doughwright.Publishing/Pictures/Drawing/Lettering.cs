namespace Doughwright.Publishing.Pictures.Drawing;

/// <summary>A class of text in a chart, with the room it needs. The sheet of styles sets the same sizes.</summary>
/// <param name="PhoneSize">Size on a phone, in units of the picture: there it is drawn smaller and its letters larger.</param>
internal sealed record Lettering(string Class, Face Face, double PhoneSize)
{
    public static Lettering Name { get; } = new("sl", Face.LabelBold, 18);

    public static Lettering Value { get; } = new("sv", Face.Label, 18);

    public static Lettering Head { get; } = new("sh", Face.LabelBold, 18);

    /// <summary>What a person may set.</summary>
    public static Lettering Free { get; } = new("slipt", Face.LabelBold, 18);

    public static Lettering Axis { get; } = new("hr", Face.Label, 15.5);

    public static Lettering Cue { get; } = new("cue", Face.Cue, 18);

    public static Lettering Figure { get; } = new("dt", Face.Figures, 18);

    /// <summary>Width on a phone, the larger of the two.</summary>
    public double WidthOf(string text) => TextWidth.Of(text, PhoneSize, Face);

    /// <summary>The text, or as much of it as fits, with an ellipsis.</summary>
    public string Fitted(string text, double width)
    {
        if (WidthOf(text) <= width)
        {
            return text;
        }

        var letters = new System.Globalization.StringInfo(text);
        var low = 0;
        var high = letters.LengthInTextElements;
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            (low, high) = WidthOf(Cut(letters, middle)) <= width ? (middle, high) : (low, middle - 1);
        }

        return Cut(letters, low);
    }

    private static string Cut(System.Globalization.StringInfo letters, int count) =>
        (count == 0 ? "" : letters.SubstringByTextElements(0, count).TrimEnd(' ', ',', ';', '\u00a0')) + "…";
}

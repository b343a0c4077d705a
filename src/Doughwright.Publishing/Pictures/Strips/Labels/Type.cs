using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>A sort of writing: its class in the stylesheet, and what is needed to know how wide it comes out.</summary>
/// <param name="Size">The larger of its sizes on the screen and on paper, in the units of the picture: what keeps apart there keeps apart everywhere.</param>
internal sealed record Type(string Class, Face Face, double Size)
{
    public static readonly Type Head = new("sh", Face.LabelBold, 14.2);
    public static readonly Type Value = new("sv", Face.Label, 14.2);
    public static readonly Type Hour = new("hr", Face.Label, 14.2);
    public static readonly Type Notch = new("nl", Face.Label, 14.2);
    public static readonly Type Figure = new("dt", Face.Figures, 14.2);
    public static readonly Type Inside = new("cl", Face.Label, 14.2);
    public static readonly Type Key = new("key", Face.LabelBold, 14.2);
    public static readonly Type Cue = new("cue", Face.Cue, 14.2);
    public static readonly Type BigHead = new("sh big", Face.LabelBold, 14.2);
    public static readonly Type BigValue = new("sv big", Face.Label, 14.2);

    /// <summary>Height over the line on which it stands, and depth below.</summary>
    private const double Ascent = 0.8;
    private const double Descent = 0.22;

    /// <summary>Letters that must be left of a shortened word, or it says nothing.</summary>
    private const int Fewest = 3;

    public double Width(string text) => TextWidth.Of(text, Size, Face);

    public Box Box(double x, double y, double width, Anchor anchor)
    {
        var left = anchor switch { Anchor.End => x - width, Anchor.Middle => x - (width / 2), _ => x };
        return new(left, y - (Ascent * Size), left + width, y + (Descent * Size));
    }

    /// <summary>The text, cut off with an ellipsis where the room ends, at a word if one ends there; null when nothing worth reading is left.</summary>
    public string? Fit(string text, double room)
    {
        if (Width(text) <= room)
        {
            return text;
        }

        var (fits, tooLong) = (0, text.Length);
        while (tooLong - fits > 1)
        {
            var middle = (fits + tooLong) / 2;
            (fits, tooLong) = Width(Start(text, middle) + "…") <= room ? (middle, tooLong) : (fits, middle);
        }

        return fits >= Fewest ? Cut(text, fits) : null;
    }

    /// <summary>The first letters, never half of one.</summary>
    private static string Start(string text, int length) => text[..(length > 0 && char.IsHighSurrogate(text[length - 1]) ? length - 1 : length)];

    private static string? Cut(string text, int length)
    {
        var cut = Start(text, length);
        var word = cut.LastIndexOf(' ');
        var shown = (word > length / 2 && text[length] != ' ' ? cut[..word] : cut).TrimEnd(' ', ',', '\u00a0');
        return shown.Length >= Fewest ? shown + "…" : null;
    }
}

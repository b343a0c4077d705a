using System.Globalization;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Keys;

/// <summary>A strip that stands alone has its scale of warmth under it: on a page it stands beside the picture.</summary>
internal static class KeyedPicture
{
    private const string Box = "viewBox=\"0 0 ";
    private const string End = "</svg>";
    private const double Room = 28;
    private const double ChipWidth = 12;
    private const double ChipHeight = 9;
    private const double Gap = 8;
    private const double UnderChips = 6;

    /// <summary>From the top of the chips to the line the figures stand on.</summary>
    private const double Drop = 8.5;

    public static string Of(string picture, Voice voice)
    {
        var (from, to) = (picture.IndexOf(Box, StringComparison.Ordinal) + Box.Length, picture.IndexOf('"', picture.IndexOf(Box, StringComparison.Ordinal) + Box.Length));
        var size = picture[from..to].Split(' ');
        var height = double.Parse(size[1], CultureInfo.InvariantCulture);
        return $"{picture[..from]}{size[0]} {Svg.Number(height + Room)}{picture[to..^End.Length]}{Key(voice, height + Room - ChipHeight - UnderChips)}{End}";
    }

    private static string Key(Voice voice, double top)
    {
        var key = WarmthKey.Of(voice);
        var svg = new Svg();
        var x = 2.0;
        svg.Text(Lettering.Value.Class, x, top + Drop, key.Coldest);
        x += Lettering.Value.WidthOf(key.Coldest) + Gap;
        foreach (var chip in key.Chips)
        {
            svg.Rect("chipf " + chip, x, top, ChipWidth, ChipHeight);
            x += ChipWidth;
        }

        return svg.Text(Lettering.Value.Class, x + Gap, top + Drop, key.Hottest).ToString();
    }
}

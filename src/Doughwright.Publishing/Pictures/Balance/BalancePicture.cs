using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Balance;

/// <summary>The dough unlaid into what it consists of: lines at the left, twisted from their shares; flour, water, sugar, fat and the rest at the right. Thickness is mass.</summary>
internal static class BalancePicture
{
    private const double Gap = 10;
    private const double TextDrop = 4.5;
    private const double LongestTwist = 52;
    private const double WidestName = 170;
    private const double LeastRibbons = 110;

    /// <summary>The lays of a rope of one yarn: strokes across it, this far apart.</summary>
    private const double Lay = 6;
    private const double ThinnestLaid = 4;

    public static string Draw(Makeup makeup, Formula formula, Voice voice, string id)
    {
        var layout = new BalanceLayout(makeup);
        var figures = new MakeupFigures(makeup, formula);
        var values = layout.Bundles.Keys.ToDictionary(matter => matter, matter => MakeupWords.Value(matter, figures, voice));
        var names = layout.Bundles.Keys.ToDictionary(matter => matter, matter => MakeupWords.Name(matter, makeup, voice));
        var masses = makeup.Rows.Select(row => MassCell.Of(row.Mass, voice)).ToList();

        // The figures at the right and left take what they need, the names what remains beside the ribbons.
        var right = BalanceLayout.Width - Gap - values.Values.Concat(names.Values).Select(Lettering.Name.WidthOf).DefaultIfEmpty().Max();
        var massWidth = masses.Select(Lettering.Figure.WidthOf).DefaultIfEmpty().Max();
        var lines = makeup.Rows.Select(row => MakeupWords.Line(row, formula)).ToList();
        var nameWidth = Math.Min(lines.Select(Lettering.Name.WidthOf).DefaultIfEmpty().Max(), Math.Min(WidestName, right - LeastRibbons - massWidth - (3 * Gap)));
        var left = nameWidth + massWidth + (2 * Gap);
        var svg = new Svg();
        var unlaid = left + Math.Min(LongestTwist, (right - left) / 3);
        DrawRibbons(svg, makeup, layout, left, unlaid, right);
        for (var row = 0; row < lines.Count; row++)
        {
            var y = ((layout.Lines[row].Top + layout.Lines[row].Bottom) / 2) + TextDrop;
            svg.Text(Lettering.Name.Class, nameWidth, y, Lettering.Name.Fitted(lines[row], nameWidth), Anchor.End);
            svg.Text(Lettering.Figure.Class, left - Gap, y, masses[row], Anchor.End);
        }

        foreach (var (matter, bundle) in layout.Bundles)
        {
            svg.TwoLines(right + Gap, ((bundle.Top + bundle.Bottom) / 2) - 15, names[matter], values[matter], above: false);
        }

        return svg.Picture(
            "strip chart",
            BalanceLayout.Width,
            layout.Height,
            id,
            voice.Say("makeup.title", ("dough", Mass.FromGrams(makeup.Rows.Sum(row => row.Mass.Grams)))),
            string.Join(" ", layout.Bundles.Keys.Select(matter => voice.Say("makeup.description-bundle", ("name", names[matter]), ("grams", Show.Number(figures.Total(matter), 1))))));
    }

    private static void DrawRibbons(Svg svg, Makeup makeup, BalanceLayout layout, double left, double unlaid, double right)
    {
        for (var row = 0; row < makeup.Rows.Count; row++)
        {
            var shares = MatterOf.All.Where(matter => layout.PlaceOf(row, matter) is not null).ToList();
            foreach (var (index, matter) in shares.Index())
            {
                var (top, end) = layout.PlaceOf(row, matter)!.Value;
                var thickness = MatterOf.Grams(makeup.Rows[row], matter)!.Value * layout.PixelsPerGram;
                var way = new Ribbon.Way(layout.Lines[row], top, end, thickness, (double)index / Math.Max(2, shares.Count));
                svg.Raw($"<path class=\"{Look(matter)}\" d=\"{Ribbon.Path(way, left, unlaid, right)}\"/>");
            }

            if (shares.Count == 1 && layout.Lines[row].Bottom - layout.Lines[row].Top >= ThinnestLaid)
            {
                DrawLays(svg, layout.Lines[row], left, unlaid);
            }
        }
    }

    /// <summary>A rope of one yarn shows its twist as slanting strokes.</summary>
    private static void DrawLays(Svg svg, Box line, double left, double unlaid)
    {
        var height = line.Bottom - line.Top;
        var slant = Math.Min(Lay * 1.6, height);
        for (var x = left; x + slant <= unlaid; x += Lay)
        {
            svg.Path("cut", [(x, line.Bottom), (x + (slant * 0.35), line.Top + (height * 0.72)), (x + (slant * 0.65), line.Top + (height * 0.28)), (x + slant, line.Top)]);
        }
    }

    private static string Look(Matter matter) => matter switch
    {
        Matter.Flour => "rib b-f",
        Matter.Water => "rib b-w",
        Matter.Sugar => "rib b-s",
        Matter.Fat => "rib b-a",
        Matter.Rest => "rib b-o",
        _ => "heatmix",
    };
}

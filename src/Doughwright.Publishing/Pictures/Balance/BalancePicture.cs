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
    private const double NoteDrop = 16;
    private const double NoteRoom = 24;
    private const double LongestTwist = 52;
    private const double WidestName = 170;
    private const double LeastRibbons = 110;

    /// <summary>The lays of a rope of one yarn: strokes across it, this far apart.</summary>
    private const double Lay = 6;
    private const double Loosening = 1.12;
    private const double LongestSlant = 0.6;
    private const int LaySteps = 12;
    private const double ThinnestLaid = 4;

    /// <summary>The edges of a thinner ribbon would be all there is of it.</summary>
    private const double ThinnestEdged = 2.5;

    public static string Draw(Makeup makeup, Formula formula, Voice voice, string id)
    {
        var layout = new BalanceLayout(makeup);
        var figures = new MakeupFigures(makeup, formula);
        var values = layout.Bundles.Keys.ToDictionary(matter => matter, matter => MakeupWords.Value(matter, figures, voice));
        var names = layout.Bundles.Keys.ToDictionary(matter => matter, matter => MakeupWords.Name(matter, makeup, voice));

        // Both ends of a ribbon are one mass, and parts of a gram add up: this picture weighs in grams, whatever the measures of the reader.
        var masses = makeup.Rows.Select(row => Show.Mass(row.Mass)).Select(grams => grams[..grams.IndexOf('\u00a0')]).ToList();

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

        var note = layout.Bundles.ContainsKey(Matter.Flour) ? voice.Words["makeup.note"] : "";
        if (note.Length > 0)
        {
            svg.Text(Lettering.Axis.Class, 0, layout.Height + NoteDrop, note);
        }

        return svg.Picture(
            "strip chart",
            BalanceLayout.Width,
            layout.Height + (note.Length > 0 ? NoteRoom : 0),
            id,
            voice.Say("makeup.title", ("dough", Show.Mass(Mass.FromGrams(makeup.Rows.Sum(row => row.Mass.Grams))))),
            string.Join(" ", layout.Bundles.Keys.Select(matter => voice.Say("makeup.description-bundle", ("name", names[matter]), ("grams", Show.Number(figures.Total(matter), 1))))) + (note.Length > 0 ? " " + note : ""));
    }

    private static void DrawRibbons(Svg svg, Makeup makeup, BalanceLayout layout, double left, double unlaid, double right)
    {
        for (var row = 0; row < makeup.Rows.Count; row++)
        {
            var line = layout.Lines[row];
            var shares = MatterOf.All.Where(matter => layout.PlaceOf(row, matter) is not null).ToList();
            var ways = shares.Select((matter, index) => (Matter: matter, Way: WayOf(makeup.Rows[row], matter, index, shares.Count))).ToList();
            foreach (var front in (bool[])[false, true])
            {
                foreach (var (matter, way) in ways.Where(one => one.Matter != Matter.Unknown))
                {
                    foreach (var run in Ribbon.Twist(way, left, unlaid).Where(run => run.IsFront == front))
                    {
                        Draw(svg, matter, run.Centres, way.Thickness / 2);
                    }
                }
            }

            foreach (var (matter, way) in ways)
            {
                if (matter == Matter.Unknown)
                {
                    svg.Raw($"<path class=\"{Look(matter)}\" d=\"{Ribbon.Whole(way, left, unlaid, right)}\"/>");
                    continue;
                }

                svg.Raw($"<path class=\"{Look(matter)}\" d=\"{Ribbon.Tail(way, unlaid, right)}\"/>");
                foreach (var edge in way.Thickness < ThinnestEdged ? [] : Ribbon.Edges(way, unlaid, right))
                {
                    svg.Raw($"<path class=\"cut\" d=\"{edge}\"/>");
                }
            }

            if (shares.Count == 1 && line.Bottom - line.Top >= ThinnestLaid)
            {
                DrawLays(svg, line, left, unlaid);
            }

            Ribbon.Way WayOf(MakeupRow share, Matter matter, int index, int count)
            {
                var (top, end) = layout.PlaceOf(row, matter)!.Value;
                return new(line, top, end, MatterOf.Grams(share, matter)!.Value * layout.PixelsPerGram, (double)index / Math.Max(2, count));
            }
        }
    }

    /// <summary>A stretch of the twist, set off from what it lies on by its edges.</summary>
    private static void Draw(Svg svg, Matter matter, IReadOnlyList<(double X, double Y)> centres, double half)
    {
        var (upper, lower) = (centres.Select(centre => (centre.X, centre.Y - half)), centres.Select(centre => (centre.X, centre.Y + half)));
        svg.Path(Look(matter), [.. upper, .. lower.Reverse()], closed: true);
        if (2 * half >= ThinnestEdged)
        {
            svg.Path("cut", upper);
            svg.Path("cut", lower);
        }
    }

    /// <summary>A rope of one yarn shows its twist as slanting strokes, wider apart where it is let go.</summary>
    private static void DrawLays(Svg svg, Box line, double left, double unlaid)
    {
        var height = line.Bottom - line.Top;
        var slant = Math.Min(height, (unlaid - left) * LongestSlant);
        for (var (x, apart) = (left - slant, Lay); x < unlaid; x += apart, apart *= Loosening)
        {
            var points = Enumerable.Range(0, LaySteps + 1).Select(step => Along((double)step / LaySteps, x)).Where(point => point.X >= left && point.X <= unlaid).ToList();
            if (points.Count > 1)
            {
                svg.Path("cut", points);
            }
        }

        // A yarn on a round rope: it runs along the edge where it turns away, and is steepest in the middle.
        (double X, double Y) Along(double share, double from) =>
            (from + (slant * share), line.Bottom - (height * (0.5 - (0.5 * Math.Cos(Math.PI * share)))));
    }

    private static string Look(Matter matter) => matter switch
    {
        Matter.Flour => "b-f",
        Matter.Water => "b-w",
        Matter.Sugar => "b-s",
        Matter.Fat => "b-a",
        Matter.Rest => "b-o",
        _ => "heatmix",
    };
}

using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Family;

/// <summary>The rope from left to right, what leaves it above it.</summary>
internal sealed class WideFamily
{
    private const double Width = 1216;
    private const double Left = 22;

    /// <summary>The last knot stands here where something leaves the rope, so that what leaves it last can be named.</summary>
    private const double LastWithOffshoots = 900;
    private const double LastAlone = 1090;
    private const double Beyond = 40;
    private const double Thickness = 5.5;
    private const double Turn = 77;
    private const double Lane = 30;
    private const double Above = 46;
    private const double Ramp = 86;
    private const double Bar = 11;
    private const double Gap = 14;

    /// <summary>Offshoots that are drawn; the list below the picture has all.</summary>
    private const int Most = 8;

    private static readonly Lettering Day = new("sh", Face.LabelBold, 14.2);
    private static readonly Lettering Picked = new("slipt", Face.LabelBold, 14.2);
    private static readonly Lettering Said = new("sv", Face.Label, 14.2);

    private readonly FamilyLine line;
    private readonly Voice voice;
    private readonly IReadOnlyList<FamilyOffshoot> offshoots;
    private readonly double rope;
    private readonly double last;

    public WideFamily(FamilyLine line, Voice voice)
    {
        (this.line, this.voice) = (line, voice);
        // What leaves first goes highest, so that no yarn crosses another.
        offshoots = [.. line.Offshoots.OrderBy(offshoot => offshoot.At).Take(Most)];
        rope = offshoots.Count == 0 ? 20 : Gap + 10 + (Lane * (offshoots.Count - 1)) + Above;
        last = offshoots.Count == 0 ? LastAlone : LastWithOffshoots;
    }

    public string Draw(string id)
    {
        var svg = new Svg();
        var end = line.Knots.Count == 1 ? Left + 240 : last + Beyond;
        foreach (var second in new[] { false, true })
        {
            svg.Path("yarn", Yarn.Strand(end - 8, at => (8 + at, rope), (0, 1), Thickness, Turn, second));
        }

        for (var index = 0; index < offshoots.Count; index++)
        {
            Leave(svg, offshoots[index], index);
        }

        for (var index = 0; index < line.Knots.Count; index++)
        {
            var x = Place(index);
            svg.Line(line.Knots[index].IsPicked ? "knot pickd" : "knot", x, rope - Bar, x, rope + Bar);
        }

        Names(svg);
        return svg.Picture("strip family family-wide", Width, rope + 56, id, FamilyPicture.Title(line, voice), FamilyPicture.Description(line, voice));
    }

    private double Place(double knot) => line.Knots.Count == 1
        ? Left + (Math.Clamp(knot, 0, 1) * 60)
        : Left + ((last - Left) * Math.Clamp(knot, -0.2, line.Knots.Count - 0.8) / (line.Knots.Count - 1));

    private void Leave(Svg svg, FamilyOffshoot offshoot, int index)
    {
        var (from, lane) = (Place(offshoot.At), Gap + 10 + (Lane * index));
        var to = Width - 8;
        FamilyPicture.Offshoot(svg, to - from, at => (from + at, rope + ((lane - rope) * FamilyPicture.Eased(Math.Min(1, at / Ramp)))), (0, 1));
        var room = to - from - Ramp;
        var title = Day.Fitted(offshoot.Title, room);
        var left = room - Day.WidthOf(title) - 10;
        var but = left > 40 ? Said.Fitted(offshoot.But, left) : "";
        svg.Pair(from + Ramp, lane - 8, title, but, Anchor.Start, "sh", "sv");
    }

    /// <summary>Days and words under their bars: those that the page is about first, then from the latest back; what finds no room is in the description and the list.</summary>
    private void Names(Svg svg)
    {
        var plan = new LabelPlan(Width);
        var order = Enumerable.Range(0, line.Knots.Count).OrderByDescending(index => line.Knots[index].IsPicked).ThenByDescending(index => index);
        foreach (var index in order)
        {
            var knot = line.Knots[index];
            var x = Place(index) - 8;
            var room = Math.Max(60, (line.Knots.Count == 1 ? 400 : (last - Left) / (line.Knots.Count - 1)) - 8);
            var lettering = knot.IsPicked ? Picked : Day;
            var (day, said) = (lettering.Fitted(knot.Day, Math.Max(room, 110)), Said.Fitted(knot.Said, Math.Max(room, 110)));
            if (plan.TryTake(LabelPlan.Line(x, rope + 30, day, lettering)) && (said.Length == 0 || plan.TryTake(LabelPlan.Line(x, rope + 48, said, Said))))
            {
                svg.Text(lettering.Class, x, rope + 30, day);
                if (said.Length > 0)
                {
                    svg.Text(Said.Class, x, rope + 48, said);
                }
            }
        }
    }
}

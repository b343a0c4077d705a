using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Slips;

/// <summary>Between two strips on one scale of time: a dashed violet line for every step from its beginning in the first to its beginning in the second.</summary>
internal static class SlipsPicture
{
    private const double Width = 1216;
    private const double Height = 74;
    private const double Left = 6;
    private const double Strip = 1106;
    private const double Ends = 4;
    private const double Straight = 10;

    /// <summary>Text beside a line keeps this far from it.</summary>
    private const double Beside = 9;

    /// <summary>From this slope on a line is long, and carries its difference at an end.</summary>
    private const double Long = 40;

    private const double Upper = 20;
    private const double Lower = Height - 12;
    private const double Middle = (Height / 2) + 4;

    /// <summary>Larger than on the screen, as it is printed.</summary>
    private static readonly Lettering Slip = new("slipt", Face.LabelBold, 14.2);

    /// <param name="span">Time from the left edge to the end of the longer strip.</param>
    public static string Draw(Rehearsal first, Rehearsal second, string firstName, string secondName, Voice voice, string id, Duration span)
    {
        double Place(double minutes) => Left + (minutes * Strip / span.Minutes);
        return Draw(first, second, firstName, secondName, voice, id, Place, Place);
    }

    /// <summary>For strips whose long waits are folded: each folds its own.</summary>
    /// <param name="from">Where a minute lies along the first strip.</param>
    /// <param name="to">Where one lies along the second.</param>
    public static string Draw(
        Rehearsal first, Rehearsal second, string firstName, string secondName, Voice voice, string id, Func<double, double> from, Func<double, double> to)
    {
        var svg = new Svg();
        var slips = SlippedStep.Of(first, second, voice);
        var lines = slips.Select(slip => (Slip: slip, Upper: from(slip.First.Minutes), Lower: to(slip.Second.Minutes))).ToList();
        foreach (var (_, upper, lower) in lines)
        {
            svg.Path("slip", [(upper, Ends), (upper, Straight), (lower, Height - Straight), (lower, Height - Ends)]);
        }

        var plan = new LabelPlan(Width);
        var strokes = lines.Select(line => (line.Upper, line.Lower)).ToList();
        foreach (var (slip, upper, lower) in lines)
        {
            Label(svg, plan, strokes, slip, upper, lower, voice);
        }

        return svg.Picture(
            "strip slips",
            Width,
            Height,
            id,
            voice.Say("slips.title", ("first", firstName), ("second", secondName)),
            slips.Count == 0 ? voice.Say("slips.none") : voice.Say("slips.description", ("slips", string.Join(voice.Words["list-comma"], slips.Select(slip => Words(slip, voice, bare: false))))));
    }

    /// <summary>Name and difference where no other line and no other text is; the difference alone where that is too long; else it is left to the description and the table.</summary>
    private static void Label(Svg svg, LabelPlan plan, IReadOnlyList<(double From, double To)> strokes, SlippedStep slip, double from, double to, Voice voice)
    {
        var (left, right) = (Math.Min(from, to), Math.Max(from, to));
        var later = to > from;
        (double X, double Y, Anchor Anchor)[] ways = right - left > Long
            ? [(left - Beside, later ? Lower : Upper, Anchor.End), (right + Beside, later ? Upper : Lower, Anchor.Start), (left - Beside, Middle, Anchor.End), (right + Beside, Middle, Anchor.Start)]
            : [(left - Beside, Middle, Anchor.End), (right + Beside, Middle, Anchor.Start), (left - Beside, Upper, Anchor.End), (right + Beside, Upper, Anchor.Start), (left - Beside, Lower, Anchor.End), (right + Beside, Lower, Anchor.Start)];
        foreach (var bare in new[] { false, true })
        {
            var text = Words(slip, voice, bare);
            foreach (var (x, y, anchor) in ways)
            {
                var box = LabelPlan.Line(x, y, text, Slip, anchor);
                if (!strokes.Any(stroke => Crosses(stroke.From, stroke.To, box)) && plan.TryTake(box))
                {
                    svg.Text(Slip.Class, x, y, text, anchor);
                    return;
                }
            }
        }
    }

    /// <summary>Whether the slanting part of a line runs through a box.</summary>
    private static bool Crosses(double from, double to, Box box)
    {
        var (above, below) = (At(box.Top), At(box.Bottom));
        return Math.Max(above, below) > box.Left - 2 && Math.Min(above, below) < box.Right + 2;

        double At(double y) => from + ((to - from) * Math.Clamp((y - Straight) / (Height - (2 * Straight)), 0, 1));
    }

    private static string Words(SlippedStep slip, Voice voice, bool bare)
    {
        var minutes = Math.Round(slip.Difference.Minutes, MidpointRounding.AwayFromZero);
        var key = $"slips.{(bare ? "bare-" : "")}{(minutes == 0 ? "same" : minutes > 0 ? "later" : "earlier")}";
        return voice.Say(key, ("step", slip.Name), ("time", Duration.FromMinutes(Math.Abs(minutes))));
    }
}

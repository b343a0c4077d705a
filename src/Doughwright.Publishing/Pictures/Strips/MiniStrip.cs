using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips.Geometry;
using Doughwright.Publishing.Pictures.Strips.Marks;
using Doughwright.Publishing.Pictures.Strips.Plans;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Strips;

/// <summary>The strip as a row of the shelf: volume and warmth only, hands as black marks, the end at the right edge.</summary>
internal static class MiniStrip
{
    /// <summary>Of every row of the shelf, and of the clock over them.</summary>
    public const double Width = 690;

    private const double Height = 64;
    private const double Bench = 46;
    private const double Highest = 43;
    private const double Thinnest = 1.6;
    private const double LeastHand = 2.5;

    private static readonly LaneRoom Room = new(9, 5, 3, 4);

    public static double Scale(IEnumerable<Plan> plans) => Highest / plans.Select(Tallest).DefaultIfEmpty(1).Max();

    public static string Draw(Rehearsal rehearsal, Course course, Voice voice, MiniOptions options)
    {
        var plan = Plan.Of(rehearsal, course);
        var perMinute = options.Width / options.Span.Minutes;
        var total = rehearsal.Total?.Likely.Minutes;
        var time = new TimeScale(options.Width - ((total ?? 0) * perMinute), perMinute, []);
        var frame = new Frame(Direction.Wide, time, Bench, options.PixelsPerGram, options.Width, Height);
        var canvas = new Canvas(options.Id, frame);
        canvas.Svg.Line("benchs", 0, Bench, options.Width, Bench);
        if (total is not null)
        {
            var from = time.Minute(0);
            foreach (var lane in Lanes.Of(plan, time, options.PixelsPerGram, Room).Where(lane => lane.Strand.JoinStart > from))
            {
                Strand(canvas, lane, from);
            }

            Dough(canvas, plan, from);
            Hands(canvas, plan, from);
        }

        return canvas.Svg.Picture("strip mini", options.Width, Height, options.Id, Title(plan, voice), Untold(plan, voice), canvas.Gradients);
    }

    /// <summary>The nights behind a row. They are a picture of their own, so that a row stays as it is when the clock is set.</summary>
    public static string Nights(IReadOnlyList<Night> nights, Duration span)
    {
        var svg = new Svg();
        foreach (var night in nights)
        {
            var (left, right) = (Math.Max(0, Width * (1 - (night.Falls / span))), Width * (1 - (night.Ends / span)));
            svg.Rect("night", left, 0, right - left, Height);
        }

        return $"<svg class=\"strip mini nights\" viewBox=\"0 0 {Svg.Number(Width)} {Svg.Number(Height)}\" aria-hidden=\"true\" preserveAspectRatio=\"xMaxYMid meet\">{svg}</svg>";
    }

    private static void Dough(Canvas canvas, Plan plan, double from)
    {
        if (plan.Body is { } body && body.End > from)
        {
            var start = Math.Max(from, body.Start);
            double Top(double minute) => Math.Max(Thinnest, Volume(plan, body, minute) * canvas.Frame.PerGram);
            canvas.Band("strand", canvas.PaintOf(start, body.End, body.Warmth), _ => 0, Top, body.Joints);
        }
    }

    private static void Strand(Canvas canvas, Lane lane, double from)
    {
        const double Lead = 8;
        var (track, join) = (lane.Strand.Track, lane.Strand.JoinStart);
        var start = Math.Max(from, track.Start);
        var fall = Math.Max(start, canvas.Frame.Time.Shift(join, -Lead));
        var end = canvas.Frame.Time.Shift(join, 1.5);
        double Bottom(double minute) => Ease.Between(minute, fall, join, lane.Bottom, lane.Strand.Manner == Manner.Alone ? lane.Bottom : 0);
        double Top(double minute) => Bottom(minute) + Math.Max(Thinnest, track.Grams(minute) * track.Swelling(minute) * canvas.Frame.PerGram);
        canvas.Band("strand", canvas.PaintOf(start, end, minute => track.Warmth(Math.Min(minute, track.End))), Bottom, Top, track.Joints);
    }

    private static void Hands(Canvas canvas, Plan plan, double from)
    {
        foreach (var (a, b) in Rails.Hands(plan).Where(hands => hands.From >= from))
        {
            var (left, right) = (canvas.Frame.Time.Place(a), canvas.Frame.Time.Place(b));
            canvas.Svg.Rect("hand", left, Bench + 5, Math.Max(LeastHand, right - left), 7);
        }
    }

    private static double Volume(Plan plan, Track body, double minute) =>
        body.Grams(minute) + (Math.Min(body.Grams(minute), plan.DoughGrams) * Math.Max(0, body.Swelling(minute) - 1));

    private static double Tallest(Plan plan) => plan.Body is { } body
        ? body.Joints.Append(body.End).Select(minute => body.Heaviest + (plan.DoughGrams * (body.MostSwelling(minute, body.End) - 1))).Append(1).Max()
        : plan.DoughGrams;

    /// <summary>What a row cannot show: how far a part rises that no model follows. Null when all is shown.</summary>
    private static string? Untold(Plan plan, Voice voice) =>
        plan.RiseUntold is { Count: > 0 } parts ? voice.Say("strip-rise-untold", ("parts", voice.List(parts))) : null;

    private static string Title(Plan plan, Voice voice)
    {
        if (plan.Rehearsal.Total is not { } total)
        {
            return voice.Say("strip-title-mini-unknown", ("title", plan.Rehearsal.Recipe.Title));
        }

        var parts = plan.Strands.Count switch
        {
            0 => voice.Say("strip-mini-alone"),
            1 => voice.Say("strip-mini-one"),
            var count => voice.Say("strip-mini-more", ("count", count)),
        };
        return voice.Say("strip-title-mini", ("title", plan.Rehearsal.Recipe.Title), ("strands", parts), ("time", total.Likely), ("hands", plan.Rehearsal.Hands));
    }
}

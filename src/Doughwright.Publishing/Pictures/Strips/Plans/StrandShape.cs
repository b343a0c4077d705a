using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Strips.Geometry;

namespace Doughwright.Publishing.Pictures.Strips.Plans;

/// <summary>A strand as heights over time: level on its lane, then down to what it joins.</summary>
internal sealed class StrandShape
{
    /// <summary>So long before it is taken up it begins to fall, in the units of the picture.</summary>
    private const double Lead = 34;

    private const double Turns = 1.15;

    private readonly Layout layout;
    private readonly Lane lane;
    private readonly Func<double, double> into;
    private readonly double phase;
    private readonly double slotThickness;

    /// <param name="intoTop">Top of what it joins, over time.</param>
    /// <param name="intoBottom">Its lower side.</param>
    /// <param name="phase">Where it lies among those that wind together, in turns.</param>
    public StrandShape(Layout layout, Lane lane, Func<double, double> intoBottom, Func<double, double> intoTop, double phase)
    {
        (this.layout, this.lane, this.phase) = (layout, lane, phase);
        IntoBottom = intoBottom;
        into = intoTop;
        var time = layout.Frame.Time;
        FallStart = Math.Max(time.Shift(Strand.JoinStart, -Lead), Strand.Start);
        slotThickness = Thickness(Strand.JoinStart);
    }

    public PlannedStrand Strand => lane.Strand;

    public Lane Lane => lane;

    /// <summary>When it leaves its lane.</summary>
    public double FallStart { get; }

    public double End => Strand.Manner == Manner.Alone ? Strand.Track.End : Math.Max(Strand.JoinEnd, Strand.JoinStart);

    private Func<double, double> IntoBottom { get; }

    public double Bottom(double minute) => Middle(minute) - (Drawn(minute) / 2);

    public double Top(double minute) => Middle(minute) + (Drawn(minute) / 2);

    public Temperature? Warmth(double minute)
    {
        if (minute <= Strand.JoinStart || Strand.Manner == Manner.Alone)
        {
            return Strand.Track.Warmth(Math.Min(minute, Strand.Track.End));
        }

        // While it is taken in its warmth goes over into that of what it joins.
        var own = Strand.Track.Warmth(Strand.JoinStart);
        var other = (Strand.Into ?? layout.Plan.Body)?.Warmth(Strand.JoinEnd);
        return own is { } a && other is { } b ? a + ((b - a) * ((minute - Strand.JoinStart) / (End - Strand.JoinStart))) : own;
    }

    /// <summary>Its thickness on the lane.</summary>
    public double Thickness(double minute) => Strand.Manner == Manner.Thread
        ? Lanes.Thread
        : Math.Max(Lanes.Thinnest, Strand.Track.Grams(Math.Min(minute, Strand.Track.End)) * layout.Frame.PerGram);

    private double Drawn(double minute)
    {
        var thickness = Thickness(minute);
        var taken = Ease.Between(minute, Strand.JoinStart, Strand.JoinEnd, 0, 1);
        return Strand.Manner switch
        {
            Manner.Winds => thickness * (1 - (0.5 * taken)),
            Manner.LaidIn or Manner.Poured => thickness * (1 - (0.96 * taken)),
            _ => thickness,
        };
    }

    private double Middle(double minute) => Strand.Manner switch
    {
        Manner.Alone => lane.Height,
        Manner.Winds => minute <= Strand.JoinStart
            ? Ease.Between(minute, FallStart, Strand.JoinStart, lane.Height, Slot(Strand.JoinStart, 0))
            : Slot(minute, (minute - Strand.JoinStart) / Math.Max(1e-9, Strand.JoinEnd - Strand.JoinStart)),
        _ => Ease.Between(minute, FallStart, Strand.JoinEnd, lane.Height, into(Strand.JoinEnd) - 1),
    };

    /// <summary>Where it lies within what it winds into.</summary>
    /// <param name="share">Of the mix that has passed.</param>
    private double Slot(double minute, double share)
    {
        var (low, high) = (IntoBottom(Strand.JoinEnd), into(Strand.JoinEnd));
        var swing = Math.Max(0, ((high - low) - slotThickness) / 2) * (1 - (0.2 * share));
        return ((low + high) / 2) + (swing * Math.Cos(2 * Math.PI * ((Turns * share) + phase)));
    }
}

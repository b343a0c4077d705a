using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>The surface of a pack of pieces, between the oven, what they stand on and the middle of the outermost shell.</summary>
internal sealed class RadialSurface<T> where T : struct, ILane<T>
{
    private readonly HearthRun<T> hearth = new();
    private OvenPack<T> oven;
    private bool stands;
    private T before, within, outside, settling, dewPoint;

    /// <summary>°C.</summary>
    public T Celsius { get; private set; }

    /// <summary>From all that it meets to the middle of the outermost shell, W/(m² K).</summary>
    public T Into { get; private set; }

    /// <summary>The one temperature it seems to meet, °C.</summary>
    public T Meets { get; private set; }

    public ref readonly OvenPack<T> Oven => ref oven;

    public void Begin(RadialLanes lanes, int lane, T enters)
    {
        (Celsius, before) = (enters, enters);
        MoveTo(lanes, lane);
    }

    public void MoveTo(RadialLanes lanes, int lane)
    {
        (oven, stands) = (new(lanes, lane), lanes.Hearth is not null);
        hearth.Begin(lanes.Hearth, oven.WallsAt(0), T.Load(lanes.Transfer, lane));
    }

    /// <summary>How it hangs together with the middle of the outermost shell.</summary>
    /// <param name="last">The outermost shell.</param>
    /// <param name="perHalf">Reach over half the width of that.</param>
    /// <param name="reach">From core to surface, m.</param>
    public void Conduct(ref readonly CrumbPack<T> crumb, ref readonly RadialShell<T> last, double perHalf, T reach)
    {
        var conducts = crumb.Conductivity + (crumb.PermeanceAt(last.Guess) * last.Wet * CrumbPack<T>.Carried(last.Guess) * last.VapourSlope);
        within = T.Of(perHalf) * conducts / reach;
    }

    /// <summary>What it meets at a moment, from a guess of its own temperature.</summary>
    /// <param name="last">The outermost shell.</param>
    /// <param name="ratio">Length of the step over that of the one before.</param>
    public void Meet(ref readonly CrumbPack<T> crumb, ref readonly RadialShell<T> last, double seconds, T ratio)
    {
        var about = Celsius + (ratio * (Celsius - before));
        var (into, meets) = oven.HeatAt(seconds, about);
        if (stands)
        {
            var (free, lies) = ((T.Of(1) - hearth.Share) * into, hearth.Share * hearth.Conducts);
            (into, meets) = (free + lies, ((free * meets) + (lies * hearth.Ahead(ratio))) / T.Max(free + lies, T.Of(1e-12)));
        }

        (outside, Meets) = (into, meets);
        if (oven.SteamsAt(seconds))
        {
            Steam(in crumb, seconds, last.Guess);
        }
        else
        {
            settling = T.Of(0);
        }

        Into = within * outside / (within + outside);
    }

    /// <summary>
    /// Steam that settles where the surface is colder than its dew point, as a chord from the one to the other: the slope at a cold surface is so slight
    /// that a step would overshoot by far. The surface is found anew between it and the outermost shell, since drawn on from before it would swing.
    /// </summary>
    private void Steam(ref readonly CrumbPack<T> crumb, double seconds, T warm)
    {
        var steam = oven.VapourAt(seconds);
        var dew = crumb.DewPoint(steam);
        var (met, settles, surface) = ((within * warm) + (outside * Meets), T.Of(0), Celsius);
        for (var round = 0; round < 6; round++)
        {
            var (over, _) = crumb.VapourAt(surface);
            var heat = oven.Settling(surface, over, crumb.Pressure) * crumb.VapourContent;
            settles = T.WhereLess(surface, dew, heat * (steam - over) / T.Max(dew - surface, T.Of(0.01)), T.Of(0));
            surface = T.Of(0.5) * (surface + ((met + (settles * dew)) / (within + outside + settles)));
        }

        var both = outside + settles;
        Meets = T.WhereLess(T.Of(0), settles, ((outside * Meets) + (settles * dew)) / both, Meets);
        (settling, dewPoint, outside) = (settles, dew, both);
    }

    /// <summary>The surface at the end of a step, and the slab below once it has met it.</summary>
    /// <param name="shell">The outermost shell, °C.</param>
    public void Settle(T shell, BakeClock clock, int step)
    {
        before = Celsius;
        Celsius = ((within * shell) + (outside * Meets)) / (within + outside);
        if (stands)
        {
            hearth.Advance(Celsius, oven.WallsAt(clock.Seconds[step]), clock.Length(step), clock.Ratio[step]);
        }
    }

    /// <summary>Heat that settling steam brings over a time in s, J/m².</summary>
    public T SettlesIn(T length) => length * settling * (dewPoint - Celsius);
}

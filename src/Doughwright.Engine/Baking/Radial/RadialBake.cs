using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>Bakes packs of lanes; the digits of a lane depend neither on the width of a pack nor on the other lanes in it.</summary>
internal static class RadialBake
{
    /// <summary>Steps to the moment the clock is made for; later ones follow the same law.</summary>
    public const int WorkingSteps = 100;

    private const int WorkingCells = 24;
    private const double WorkingOutermost = 0.03;
    private const int RoughSteps = 40;
    private const int RoughCells = 14;
    private const double RoughOutermost = 0.05;

    /// <summary>The grid of every rehearsal: the core within 0.3 K of a fine one.</summary>
    public static RadialGrid WorkingGrid(double dimensions) => new(dimensions, WorkingCells, WorkingOutermost);

    /// <summary>A grid to look for an answer on that is then gone over on the grid of every rehearsal: a fifth of the work, the core within about a kelvin.</summary>
    public static RadialGrid RoughGrid(double dimensions) => new(dimensions, RoughCells, RoughOutermost);

    /// <summary>
    /// The moments of every bake of a piece, whatever the oven: the same at home and elsewhere, so that a step is never what tells the two apart.
    /// Scaled by what such pieces usually take, about a quarter of an hour for 50 g and the more the heavier.
    /// </summary>
    /// <param name="longest">How many times the usual bake it goes on for.</param>
    /// <param name="minutes">It goes on for half as long again as so many minutes at least, up to a day.</param>
    public static BakeClock ClockFor(Quantities.Mass piece, double longest, double minutes = 0) => ClockFor(piece, longest, minutes, WorkingSteps);

    /// <inheritdoc cref="ClockFor(Quantities.Mass, double, double)"/>
    public static BakeClock RoughClockFor(Quantities.Mass piece, double longest, double minutes) => ClockFor(piece, longest, minutes, RoughSteps);

    private static BakeClock ClockFor(Quantities.Mass piece, double longest, double minutes, int steps)
    {
        var usual = 900 * Elementary.Pow(piece.Grams / 50, 0.4);
        var times = Math.Max(longest, Math.Min(90 * minutes, 86400) / usual);
        return new(usual, steps, (int)(steps * Elementary.Pow(times, 2.0 / 3)));
    }

    /// <summary>Bakes each pack until the step that passes the moments of its lanes.</summary>
    public static BakeTrace Until(RadialGrid grid, BakeClock clock, RadialLanes lanes, double[] seconds) =>
        Run(grid, lanes, new Ending(seconds, null), new(clock, lanes.Count));

    /// <inheritdoc cref="Until(RadialGrid, BakeClock, RadialLanes, double[])"/>
    public static BakeTrace Until(RadialGrid grid, BakeClock clock, RadialLanes lanes, double seconds) => Until(grid, clock, lanes, Every(seconds, lanes.Count));

    /// <summary>Bakes each pack until its cores have passed their targets in °C, and then so much longer, or until the clock has run out.</summary>
    /// <param name="beyond">Factor on the time of each lane, 1 or more.</param>
    public static BakeTrace UntilDone(RadialGrid grid, BakeClock clock, RadialLanes lanes, double[] core, double[]? beyond = null) =>
        Run(grid, lanes, new Ending(beyond ?? Every(1, lanes.Count), core), new(clock, lanes.Count));

    /// <summary>Bakes each pack until its cores have passed their targets in °C and so many seconds are over as well, or until the clock has run out.</summary>
    public static BakeTrace UntilDoneAnd(RadialGrid grid, BakeClock clock, RadialLanes lanes, double[] core, double[] seconds) =>
        Run(grid, lanes, new Ending(Every(1, lanes.Count), core, seconds), new(clock, lanes.Count));

    /// <summary>When each core has passed its target, in s; infinite when it had not by the end of the clock, and not a number when nobody knows.</summary>
    public static double[] TimesTo(RadialGrid grid, BakeClock clock, RadialLanes lanes, double[] core)
    {
        var trace = Run(grid, lanes, new Ending(Every(1, lanes.Count), core), new(clock, lanes.Count, coreOnly: true));
        return [.. core.Select((target, lane) => trace.When(trace.Core, lane, target) is var when && double.IsInfinity(when) && trace.IsLost(lane) ? double.NaN : when)];
    }

    private static double[] Every(double value, int count)
    {
        var values = new double[count];
        Array.Fill(values, value);
        return values;
    }

    private static BakeTrace Run(RadialGrid grid, RadialLanes lanes, Ending ending, BakeTrace trace)
    {
        var kernel = new Kernel(grid, trace.Clock, lanes, ending, trace);
        Lanes.Run(ref kernel);
        return trace;
    }

    /// <summary>When a pack has baked long enough: at so many seconds, or so many times as long as its core took.</summary>
    private sealed record Ending(double[] Times, double[]? Core, double[]? Least = null)
    {
        public bool Reached(BakeTrace trace, int step, int lane, int width)
        {
            for (var each = lane; each < lane + width; each++)
            {
                var seconds = trace.Clock.Seconds[step];
                if (trace.IsLost(each))
                {
                    continue;
                }

                if (Least is { } least && seconds < least[each])
                {
                    return false;
                }

                if (Core is { } target
                    ? !(trace.Core[(step * trace.Lanes) + each] >= target[each]) || seconds < Times[each] * trace.When(trace.Core, each, target[each], step)
                    : !(seconds >= Times[each]))
                {
                    return false;
                }
            }

            return true;
        }
    }

    private readonly record struct Kernel(RadialGrid Grid, BakeClock Clock, RadialLanes RadialLanes, Ending Ending, BakeTrace Trace) : ILaneKernel
    {
        [MethodImpl(MethodImplOptions.NoInlining)]
        public void Run<T>() where T : struct, ILane<T>
        {
            var run = new RadialRun<T>(Grid, Clock);
            for (var lane = 0; lane < RadialLanes.Count; lane += T.Width)
            {
                Bake(run, lane);
            }
        }

        private void Bake<T>(RadialRun<T> run, int lane) where T : struct, ILane<T>
        {
            run.Begin(RadialLanes, lane);
            Trace.Note(run, 0, lane);
            for (var step = 1; step <= Clock.Count; step++)
            {
                var settled = run.Advance(step);
                Trace.Note(run, step, lane);
                if (!settled)
                {
                    Lose(run, step, lane);
                }

                if (Ending.Reached(Trace, step, lane, T.Width))
                {
                    break;
                }
            }

            Trace.Forget(lane, T.Width);
        }

        private void Lose<T>(RadialRun<T> run, int step, int lane) where T : struct, ILane<T>
        {
            for (var each = 0; each < T.Width; each++)
            {
                if (!run.IsSettled(each))
                {
                    Trace.Lose(lane + each, step);
                }
            }
        }
    }
}

using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>Somewhere that pieces stand after the oven, and for how long.</summary>
/// <param name="Lanes">As the pieces meet it; of themselves they bring what they brought to the oven.</param>
internal sealed record RackStay(RadialLanes Lanes, BakeClock Clock);

/// <summary>
/// Follows packs of lanes through a bake and on through what comes after it. All lanes bake by one clock and so come out at one moment: a piece that
/// takes longer is slower in everything by as much (<see cref="AsFastAs"/>), and its clock is read so many times as slowly.
/// </summary>
internal static class RackBake
{
    /// <summary>The last stay: core, surface, mean, loss and browning from its beginning on, until all cores are below such a temperature or its clock ends.</summary>
    /// <param name="oven">Ends when the pieces come out.</param>
    /// <param name="stays">At least one.</param>
    /// <param name="until">°C by lane; null for the end of the clock.</param>
    public static BakeTrace Follow(RadialGrid grid, BakeClock oven, RadialLanes baking, IReadOnlyList<RackStay> stays, double[]? until)
    {
        var kernel = new Kernel(grid, oven, baking, stays, until, new(stays[^1].Clock, baking.Count));
        Lanes.Run(ref kernel);
        return kernel.Trace;
    }

    /// <summary>
    /// Pieces in which all that moves heat and water moves so many times as fast, in every lane: at a moment they are where they else were so many
    /// times as late. What an oven does by its own clock, its steam and its door, does not follow.
    /// </summary>
    public static RadialLanes AsFastAs(RadialLanes lanes, double[] times) => lanes with
    {
        Transfer = Times(lanes.Transfer, times),
        Conductivity = Times(lanes.Conductivity, times),
        Effectiveness = Times(lanes.Effectiveness, times),
        Skin = Times(lanes.Skin, [.. times.Select(factor => 1 / factor)]),
    };

    private static double[] Times(double[] values, double[] factors) => [.. values.Zip(factors, (value, factor) => value * factor)];

    private readonly record struct Kernel(
        RadialGrid Grid, BakeClock Oven, RadialLanes Baking, IReadOnlyList<RackStay> Stays, double[]? Until, BakeTrace Trace) : ILaneKernel
    {
        [MethodImpl(MethodImplOptions.NoInlining)]
        public void Run<T>() where T : struct, ILane<T>
        {
            for (var lane = 0; lane < Baking.Count; lane += T.Width)
            {
                var run = new RadialRun<T>(Grid, Oven);
                run.Begin(Baking, lane);
                Advance(run, Oven, lane);
                foreach (var stay in Stays.SkipLast(1))
                {
                    run.MoveTo(stay.Lanes, lane, stay.Clock);
                    Advance(run, stay.Clock, lane);
                }

                run.MoveTo(Stays[^1].Lanes, lane, Stays[^1].Clock);
                Note(run, lane);
            }
        }

        private void Advance<T>(RadialRun<T> run, BakeClock clock, int lane) where T : struct, ILane<T>
        {
            for (var step = 1; step <= clock.Count; step++)
            {
                Advance(run, step, lane, lostFrom: 0);
            }
        }

        /// <summary>Of a lane that does not come to rest nothing is known from then on.</summary>
        private void Advance<T>(RadialRun<T> run, int step, int lane, int lostFrom) where T : struct, ILane<T>
        {
            var settled = run.Advance(step);
            for (var each = 0; !settled && each < T.Width; each++)
            {
                if (!run.IsSettled(each))
                {
                    Trace.Lose(lane + each, lostFrom);
                }
            }
        }

        private void Note<T>(RadialRun<T> run, int lane) where T : struct, ILane<T>
        {
            Trace.Note(run, 0, lane);
            for (var step = 1; step <= Trace.Clock.Count; step++)
            {
                Advance(run, step, lane, lostFrom: step);
                Trace.Note(run, step, lane);
                if (Reached(step, lane, T.Width))
                {
                    break;
                }
            }

            Trace.Forget(lane, T.Width);
        }

        private bool Reached(int step, int lane, int width)
        {
            for (var each = lane; each < lane + width; each++)
            {
                if (Until is null || !(Trace.Core[(step * Trace.Lanes) + each] <= Until[each]))
                {
                    return false;
                }
            }

            return true;
        }
    }
}

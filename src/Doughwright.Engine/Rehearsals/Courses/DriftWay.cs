using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Courses;

/// <summary>How a part drifts towards the air for a known time, and rises by what yeast is in it.</summary>
internal static class DriftWay
{
    /// <param name="dough">As it stands at the start; null when it does not rise.</param>
    public static IReadOnlyList<WayPoint> Of(StepInput input, Body body, PerLane start, double minutes, RiseState? dough) =>
        Follow(input, body, start, minutes, dough?.Likely());

    /// <summary>
    /// Shaping presses gas out of every piece. The rehearsal does so at the end, for all at once; along the way the pieces are taken to be
    /// shaped one after the other, so that the mean of all falls evenly to what the rehearsal ends at.
    /// </summary>
    public static IReadOnlyList<WayPoint> OfShaping(StepInput input, Body body, PerLane start, double minutes, RiseState dough)
    {
        var state = dough.Likely();
        var way = Follow(input, body, start, minutes, state);
        var unshaped = state.Growth[0];
        state.PressOut(input.Stage.Priors.Rise.ShapingKeeps);
        var pressed = unshaped - state.Growth[0];
        return [.. way.Select(point => point with { Growth = point.Growth - (pressed * point.Minutes / minutes) })];
    }

    private static WayPoint[] Follow(StepInput input, Body body, PerLane start, double minutes, RiseState? state)
    {
        var time = Duration.FromMinutes(minutes);
        var steps = Rising.StepsOver(time);
        var step = time / steps;
        var run = Bodies.DriftLikely(input, body, start, step);
        var shares = run.Grid.ShellShares;
        var (mean, growth, shells) = (new double[steps], new double[steps], new double[steps * shares.Length]);
        Rising.Advance(run, input, Duration.Zero, step, steps, mean, shells);
        var way = new WayPoint[steps + 1];
        way[0] = new(0, start.Central, state?.Growth[0]);
        if (state is not null)
        {
            state.Begin(RiseStage.ForMinutes([minutes]));
            state.Advance(new RiseWarmth(mean, shells, shares, 1), step, growth);
        }

        for (var index = 1; index <= steps; index++)
        {
            way[index] = new(index == steps ? minutes : step.Minutes * index, mean[index - 1], state is null ? null : growth[index - 1]);
        }

        return way;
    }
}

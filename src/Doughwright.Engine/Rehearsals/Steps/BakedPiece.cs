using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>How a bake went, in every lane.</summary>
/// <param name="Pace">
/// By how much the core runs quicker than the trace. A piece that is flatter than it is taken for is quicker in all of it; a core that lags leaves
/// crust and loss as they are.
/// </param>
/// <param name="Longer">How many times as long as its core needs a piece stays in, for its crust.</param>
internal sealed record BakedPiece(BakeTrace Trace, PerLane Pace, PerLane Longer)
{
    /// <summary>A bake is followed for so many times what its core takes, to see when its crust is as brown as at home.</summary>
    public const double Beyond = 1.5;

    /// <summary>Minutes until each piece comes out; infinite where its core does not come to its target, or stays longer than it is followed.</summary>
    public PerLane MinutesFor(PerLane core) => MinutesTo(core).Each((lane, minutes) =>
        minutes * Longer[lane] is var stays && 60 * stays * Whole(lane) <= Trace.Clock.Seconds[^1] ? stays : double.PositiveInfinity);

    /// <summary>Minutes until each core has come to its target; infinite where it does not.</summary>
    public PerLane MinutesTo(PerLane core) => core.Each((lane, target) =>
        Trace.When(Trace.Core, lane, target) / 60 / Pace[lane] is var minutes && double.IsNaN(minutes) ? double.PositiveInfinity : minutes);

    /// <summary>Minutes until each crust has browned as far; infinite where it had not by then.</summary>
    public PerLane MinutesToBrowning(PerLane browning, PerLane minutes) => browning.Each((lane, target) =>
        Trace.When(Trace.Browning, lane, target) / 60 / Whole(lane) is var time && time <= Beyond * minutes[lane] ? time : double.PositiveInfinity);

    public PerLane Core(PerLane minutes) => minutes.Each((lane, time) => Trace.At(Trace.Core, lane, 60 * time * Pace[lane]));

    public PerLane Surface(PerLane minutes) => At(Trace.Surface, minutes);

    /// <summary>Share of the dough's mass.</summary>
    public PerLane Loss(PerLane minutes) => At(Trace.Loss, minutes);

    public PerLane Browning(PerLane minutes) => At(Trace.Browning, minutes);

    /// <summary>Mean over the volume of the likely piece. The core is colder than that.</summary>
    public IReadOnlyList<WayPoint> Way(double minutes)
    {
        var way = new List<WayPoint>();
        for (var step = 0; step <= Trace.Clock.Count && Trace.Clock.Seconds[step] < 60 * minutes * Whole(0); step++)
        {
            way.Add(new(Trace.Clock.Seconds[step] / 60 / Whole(0), Trace.Mean[step * Trace.Lanes], null));
        }

        way.Add(new(minutes, Trace.At(Trace.Mean, 0, 60 * minutes * Whole(0)), null));
        return way;
    }

    /// <summary>In how many lanes nobody knows how it is after so many minutes, because its heat did not come to rest, here or where its pace was found.</summary>
    public int Untold(PerLane minutes) => Core(minutes).Each((lane, celsius) => IsUntold(lane, celsius) ? 1 : 0).Values.Count(untold => untold > 0);

    /// <summary>The same of the likely piece.</summary>
    public bool IsUntold(PerLane minutes) => IsUntold(0, Core(minutes).Central);

    private bool IsUntold(int lane, double celsius) => double.IsNaN(Pace[lane]) || (Trace.IsLost(lane) && double.IsNaN(celsius));

    private PerLane At(double[] column, PerLane minutes) => minutes.Each((lane, time) => Trace.At(column, lane, 60 * time * Whole(lane)));

    private double Whole(int lane) => Math.Max(1, Pace[lane]);
}

using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>A risen piece on its way through the oven, in every lane.</summary>
internal sealed class OvenPiece
{
    /// <summary>
    /// A hundredth of the time on a rough grid will do, since a pace takes up the rest. With one expansion the stride leads to two and a half spreads
    /// of what an oven is taken to give: beyond that it is not the oven that makes the bake quick or slow.
    /// </summary>
    private static readonly RootTolerance Tolerance = new(1e-3, 0.01, MaxEvaluations: 30, MaxExpansions: 1);

    /// <summary>The minutes to a core go about with this power of one over what the oven gives: only how two causes share a difference hangs on it. A choice.</summary>
    private const double TimeByHeat = 0.6;

    private static readonly double OvensShare =
        BakeLaws.Lag.Spread * BakeLaws.Lag.Spread / (BakeLaws.Transfer.Spread * BakeLaws.Transfer.Spread * TimeByHeat);

    private const double Stride = 2.5 / 3;

    /// <summary>Baking is followed until so many times the usual bake of such a piece.</summary>
    private const double LongestBake = 4;

    /// <summary>And until half as long again as the author took, if that was no longer than this.</summary>
    public static readonly Duration MostFollowed = Duration.FromHours(16);

    private readonly RadialPiece[] pieces;
    private readonly RadialLanes lanes;
    private readonly RadialGrid grid;
    private readonly BakeClock clock;
    private readonly double authors;

    private OvenPiece(RadialPiece[] pieces, double minutes)
    {
        (this.pieces, authors) = (pieces, minutes);
        lanes = RadialPiece.Lanes(pieces);
        grid = RadialBake.WorkingGrid(pieces[0].Form.Dimensions);
        clock = RadialBake.ClockFor(pieces[0].Mass, LongestBake, minutes);
    }

    /// <summary>Null when too little of the dough is known to say how it takes heat, or there is too little water in it for a dough.</summary>
    /// <param name="minutes">What the author took; 0 where that is not known.</param>
    public static OvenPiece? Of(Step step, Portion portion, PerLane start, OvenSetting oven, Stage stage, double minutes)
    {
        var mass = portion.Mass / portion.Pieces;
        if ((BakingDough.Of(portion.Composition) ?? BakingDough.Of(1000 * portion.JoulesPerKelvin / portion.Mass.Grams)) is not { } dough || !(mass.Grams > 0))
        {
            return null;
        }

        var gasFree = mass.Grams / 1000 / dough.Density;
        var risenForm = RisenForm.Of(step, portion, stage, gasFree);
        var form = RisenForm.Radial(risenForm);
        var isOff = AuthorsOven.IsOffByNobodyKnows(stage);
        var (growth, under) = (RisenForm.GrowthOf(portion, stage), UnderSide.Share(risenForm));
        var pieces = new RadialPiece[stage.Lanes];
        for (var lane = 0; lane < pieces.Length; lane++)
        {
            pieces[lane] = new()
            {
                Dough = dough,
                Mass = mass,
                CubicMetres = gasFree * growth[lane],
                Form = form,
                Start = Temperature.FromCelsius(start[lane]),
                Pressure = stage.Pressure,
                Effectiveness = stage.Priors.Effectiveness[lane],
                Skin = stage.Priors.Skin[lane],
                Oven = Ovens.For(step, stage, OvenDials.Inside(oven, stage) + (isOff ? stage.Priors.OvenBias[lane] : 0), under),
                Shut = UnderSide.Shut(risenForm, step.On),
            };
        }

        return new(pieces, minutes) { Under = under };
    }

    /// <summary>
    /// What the oven gives, against its default, and the bake itself, so that each lane's core comes to its target in its minutes. What is longer or
    /// shorter than such a core needs is put down to two causes, as their spreads have it: an oven that gives less or more, and what one radius does not
    /// tell. A long bake whose core the author measured is then one whose core is slower than the rest of it; where nobody did, the piece stays in for
    /// its crust when its core is done.
    /// </summary>
    /// <param name="measured">Whether the core is what the author measured.</param>
    /// <param name="likely">What an oven is taken to give in each lane, against its default, before the author's minutes are known.</param>
    public (PerLane Transfer, BakedPiece Baked) Fit(PerLane core, PerLane minutes, bool measured, PerLane likely)
    {
        var (seconds, target, before) = (Padded(minutes, each => each * 60), Padded(core, each => each), Padded(likely, Elementary.Log));
        var (rough, moments) = (RadialBake.RoughGrid(grid.Dimensions), RadialBake.RoughClockFor(pieces[0].Mass, LongestBake, authors));
        var found = LaneRoots.FromOpen(
            (open, logs) =>
            {
                var some = lanes.Only(open);
                double[] OfSome(Func<int, double> value) => [.. Enumerable.Range(0, some.Count).Select(at => value(Math.Min(at, open.Length - 1)))];
                var times = RadialBake.TimesTo(rough, moments, some with { Transfer = OfSome(at => Elementary.Exp(logs[at])) }, OfSome(at => target[open[at]]));
                return [.. open.Select((lane, at) => LateBy(seconds[lane], times[at]) + (OvensShare * (logs[at] - before[lane])))];
            },
            before,
            Stride * BakeLaws.Transfer.Spread,
            rising: true,
            Tolerance);
        double[] logs = [.. found.Select(root => root.X)];
        var trace = RadialBake.UntilDoneAnd(grid, clock, With(logs), target, seconds);
        var longer = core.Each((lane, celsius) => trace.When(trace.Core, lane, celsius) is var when && (found[lane].Status == RootStatus.NotANumber || (double.IsInfinity(when) && trace.IsLost(lane)))
            ? double.NaN
            : seconds[lane] / when);
        var transfer = new PerLane([.. logs.Take(core.Count).Select(Elementary.Exp)]);
        var pace = longer.Map(ratio => measured ? 1 / ratio : Math.Max(1, 1 / ratio));
        return (transfer, new(trace, pace, longer.With(pace, (ratio, quicker) => ratio * quicker)));
    }

    /// <summary>Bakes until the pieces come out, and some time beyond.</summary>
    public BakedPiece Bake(PerLane core, PerLane transfer, PerLane pace, PerLane longer)
    {
        var (stays, quicker) = (Padded(longer, each => each), Padded(pace, each => each));
        double[] beyond = [.. stays.Select((times, lane) => BakedPiece.Beyond * Math.Max(1, times) / Math.Min(1, quicker[lane]))];
        return new(RadialBake.UntilDone(grid, clock, With(Padded(transfer, Elementary.Log)), Padded(core, each => each), beyond), pace, longer);
    }

    /// <summary>What each lane brings to the oven.</summary>
    public RadialLanes Lanes => lanes;

    public RadialGrid Grid => grid;

    /// <summary>Share of the surface that lies on what is under it.</summary>
    public double Under { get; private init; }

    /// <summary>The core of the likely piece goes on to so much after the oven, and so many minutes later, at the pace of its bake; null where a step does not come to rest.</summary>
    public (double Celsius, double Minutes)? CarriesOn(double minutes, double transfer, double pace, double roomCelsius)
    {
        const double Watched = 1200;
        var away = RadialPiece.Lanes([pieces[0] with { Oven = BakeLaws.Room(roomCelsius), Shut = 0 }]);
        var (oven, rack) = (new BakeClock(60 * minutes * pace, RadialBake.WorkingSteps, RadialBake.WorkingSteps), new BakeClock(Watched, 60, 60));
        var run = new RadialRun<Lane1>(grid, oven);
        run.Begin(RadialPiece.Lanes([pieces[0] with { Transfer = transfer }]), 0);
        for (var step = 1; step <= oven.Count; step++)
        {
            if (!run.Advance(step))
            {
                return null;
            }
        }

        var (most, at) = (run.Core.Value, 0.0);
        run.MoveTo(away, 0, rack);
        for (var step = 1; step <= rack.Count; step++)
        {
            if (!run.Advance(step))
            {
                return null;
            }

            (most, at) = run.Core.Value > most ? (run.Core.Value, rack.Seconds[step] / 60 / pace) : (most, at);
        }

        return (most, at);
    }

    /// <summary>ln of wanted over found. A core that is not there by the end of the clock counts by its sign; a lane that is lost ends its search.</summary>
    private static double LateBy(double wanted, double found) =>
        double.IsNaN(found) ? double.NaN : double.IsInfinity(found) ? double.NegativeInfinity : Elementary.Log(wanted / found);

    private RadialLanes With(double[] logTransfer) => lanes with { Transfer = Array.ConvertAll(logTransfer, Elementary.Exp) };

    private double[] Padded(PerLane values, Func<double, double> of)
    {
        var padded = new double[lanes.Count];
        for (var lane = 0; lane < padded.Length; lane++)
        {
            padded[lane] = of(values[Math.Min(lane, values.Count - 1)]);
        }

        return padded;
    }
}

using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>A piece in an oven that nobody has anchored, in the lanes of a rehearsal: vapour, skin and oven as uncertain as there.</summary>
/// <param name="IsOvenStated">The source states what the oven gives, so that it is not uncertain.</param>
/// <param name="Core">The core at which times are compared, °C; null when the case compares none.</param>
internal sealed record OvenBake(RadialPiece Piece, bool IsOvenStated, double? Core) : ICaseModel
{
    /// <summary>A bake is followed for so many times the usual one of such a piece; what is not done by then never is.</summary>
    private const double Longest = 12;

    private static readonly Priors Priors = Priors.For(Rehearser.OrdinaryLanes, new RisePriors());

    private RadialPiece[] Lanes => [.. Enumerable.Range(0, Priors.Lanes).Select(lane => Piece with
    {
        Effectiveness = Priors.Effectiveness[lane],
        Skin = Priors.Skin[lane],
        Transfer = IsOvenStated ? 1 : Priors.Transfer[lane],
    })];

    private RadialGrid Grid => RadialBake.WorkingGrid(Piece.Form.Dimensions);

    public CaseAnswer Answer(CaseSeries series)
    {
        if (series.Of == BakeKind.TimeToCore)
        {
            return CaseAnswer.Each(series, core => MinutesTo(core, Piece.Oven.Celsius));
        }

        if (series.Of == BakeKind.LossByCore)
        {
            return CaseAnswer.Each(series, LossAt);
        }

        if (series.Of == BakeKind.TimeToSurface)
        {
            var heated = RadialBake.Until(Grid, RadialBake.ClockFor(Piece.Mass, 1), RadialPiece.Lanes(Lanes), RadialBake.ClockFor(Piece.Mass, 1).Seconds[^1]);
            return CaseAnswer.Each(series, surface => [.. Enumerable.Range(0, Priors.Lanes)
                .Select(lane => surface <= Piece.Start.Celsius ? 0 : heated.When(heated.Surface, lane, surface) / 60)]);
        }

        if (series.Of == BakeKind.TimeByOven)
        {
            return Core is { } compared ? ByOven(series, compared) : CaseAnswer.Refused(CaseFaults.NotComputed, Grade.Warning, ("quantity", series.Quantity));
        }

        var last = 60 * series.Points.Max(point => point.Place) / Math.Min(1, Priors.BakeLag.Values.Min());
        var trace = RadialBake.Until(Grid, ClockTo(last), RadialPiece.Lanes(Lanes), last);
        return CaseAnswer.Each(series, minutes => At(series.Of, trace, 60 * minutes));
    }

    private CaseAnswer ByOven(CaseSeries series, double core)
    {
        var reference = MinutesTo(core, series.Reference!.Value);
        return double.IsFinite(reference[0])
            ? CaseAnswer.Each(series, oven => [.. MinutesTo(core, oven).Zip(reference, (minutes, known) => minutes / known)])
            : CaseAnswer.Refused(CaseFaults.NotComputed, Grade.Warning, ("quantity", series.Quantity));
    }

    private double[] MinutesTo(double core, double oven)
    {
        var trace = Until(core, [.. Lanes.Select(piece => piece with { Oven = piece.Oven with { Celsius = oven } })]);
        return [.. Enumerable.Range(0, Priors.Lanes).Select(lane => core <= Piece.Start.Celsius ? 0 : Priors.BakeLag[lane] * trace.When(trace.Core, lane, core) / 60)];
    }

    /// <summary>% of the dough, when the core has come so far; not a number in a lane in which it never does.</summary>
    private double[] LossAt(double core)
    {
        var trace = Until(core, Lanes);
        return [.. Enumerable.Range(0, Priors.Lanes).Select(lane => 100 * trace.At(trace.Loss, lane, trace.When(trace.Core, lane, core)))];
    }

    private BakeTrace Until(double core, RadialPiece[] pieces)
    {
        var target = new double[Numerics.Lanes.Padded(pieces.Length)];
        Array.Fill(target, core);
        return RadialBake.UntilDone(Grid, RadialBake.ClockFor(Piece.Mass, Longest), RadialPiece.Lanes(pieces), target);
    }

    private double[] At(CaseQuantity quantity, BakeTrace trace, double seconds)
    {
        double[] Of(double[] column, Func<double, double> told) => [.. Enumerable.Range(0, Priors.Lanes).Select(lane => told(trace.At(column, lane, seconds)))];
        var water = Piece.Dough.Water;
        return quantity == BakeKind.CoreTemperature ? [.. Enumerable.Range(0, Priors.Lanes).Select(lane => trace.At(trace.Core, lane, seconds / Priors.BakeLag[lane]))]
            : quantity == BakeKind.SurfaceTemperature ? Of(trace.Surface, celsius => celsius)
            : quantity == BakeKind.Loss ? Of(trace.Loss, share => 100 * share)
            // What is lost is water: kg per kg of dry matter.
            : Of(trace.Loss, share => water - (share * (1 + water)));
    }

    /// <summary>A clock that goes on to a moment, its steps by the same law as in every rehearsal.</summary>
    private BakeClock ClockTo(double seconds)
    {
        var usual = RadialBake.ClockFor(Piece.Mass, 1).Seconds[^1];
        return RadialBake.ClockFor(Piece.Mass, Require.Within(Math.Max(1, 1.1 * seconds / usual), 1, Longest, "Time in the oven, in usual bakes of such a piece,"));
    }
}

using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>A piece in an oven that nobody has anchored: the pace of ovens and shapes is as wide as in a rehearsal of such a piece.</summary>
/// <param name="Coefficient">W/(m² K) as the source states it; null for that of home ovens, with its spread.</param>
/// <param name="Core">The core at which times are compared; null when the case compares none.</param>
internal sealed record OvenBake(OvenLoad Load, double Oven, OvenAir Mode, Temperature Boils, double? Coefficient, double? Core) : ICaseModel
{
    /// <summary>A static dial stands for a fan's that is so much lower, as in a rehearsal. Source: oven-pairs.</summary>
    private const double StaticOverFan = 20;

    private static readonly Priors Priors = Priors.For(Rehearser.OrdinaryLanes, new RisePriors());

    public CaseAnswer Answer(CaseSeries series)
    {
        if (series.Of == BakeKind.TimeToCore)
        {
            return CaseAnswer.Each(series, core => MinutesTo(core, Oven).Values);
        }

        if (series.Of != BakeKind.TimeByOven)
        {
            return CaseAnswer.NoModel(series);
        }

        if (Core is not { } compared)
        {
            return CaseAnswer.Refused(CaseFaults.NotComputed, Grade.Warning, ("quantity", series.Quantity));
        }

        var reference = MinutesTo(compared, series.Reference!.Value);
        return CaseAnswer.Each(series, oven => (MinutesTo(compared, oven) / reference).Values);
    }

    private PerLane MinutesTo(double core, double oven)
    {
        var start = Load.Start.Central;
        if (core <= start)
        {
            return PerLane.Same(0, Load.Start.Count);
        }

        // What no crumb reaches at this height is never there; no clamp makes a bake of it.
        if (core >= Boils.Celsius)
        {
            return PerLane.Same(double.PositiveInfinity, Load.Start.Count);
        }

        var coefficient = Coefficient is { } stated ? PerLane.Same(stated, Load.Start.Count) : Priors.Oven;
        var piece = OvenPiece.Of(Load, Mode == OvenAir.Static ? oven - StaticOverFan : oven, Boils, coefficient, Priors);
        var share = PerLane.Same((core - start) / (Boils.Celsius - start), Load.Start.Count);
        return new PerLane(piece.TimeToShare(share)) / (piece.FourierPerMinute * Priors.BakePace);
    }
}

using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>How fast the yeast or the bacteria of a sourdough multiply by temperature.</summary>
internal sealed class SourdoughGrowthKind : CaseKind
{
    private const string Of = "of";

    private static readonly CaseQuantity Rate = new("growth rate", Dimension.Temperature, Dimension.Rate);
    private static readonly CaseQuantity Speed = new("speed", Dimension.Temperature, Dimension.Ratio, IsAgainst: true);
    private static readonly CaseQuantity Best = new("best temperature", null, Dimension.Temperature);

    public override string Name => "sourdough growth";

    public override IReadOnlyList<string> Keys => [Of];

    public override IReadOnlyList<CaseQuantity> Quantities => [Rate, Speed, Best];

    public override ICaseModel? Read(CaseConditions conditions) => conditions.NeedWord<Microbe>(Of) switch
    {
        Microbe.Yeast => new Growing(SourdoughGrowth.Yeast, YeastStops),
        Microbe.Bacteria => new Growing(SourdoughGrowth.Bacteria, [SourdoughGrowth.Bacteria.MaximumCelsius]),
        _ => null,
    };

    /// <summary>Where the yeast stops, in the lanes of a rehearsal; how much dough there is does not matter to it.</summary>
    private static double[] YeastStops => Culture.In(
        Mass.FromGrams(2), Mass.FromGrams(1), Priors.For(Rehearser.OrdinaryLanes, new RisePriors()).Rise).MaximumCelsius;

    private enum Microbe
    {
        Yeast,
        Bacteria,
    }

    /// <param name="Stops">°C, per lane; one lane where no spread is known.</param>
    private sealed record Growing(GrowthCurve Curve, double[] Stops) : ICaseModel
    {
        public CaseAnswer Answer(CaseSeries series)
        {
            if (series.Of == Best)
            {
                // x^b exp(-c x) is highest at x = b/c.
                return CaseAnswer.Each(series, _ => Array.ConvertAll(Stops, stops => stops - (Curve.B / Curve.C)));
            }

            if (series.Of == Rate)
            {
                return CaseAnswer.Each(series, At);
            }

            var reference = At(series.Reference!.Value);
            return reference.All(rate => rate > 0)
                ? CaseAnswer.Each(series, celsius => [.. At(celsius).Zip(reference, (rate, known) => rate / known)])
                : CaseAnswer.Refused(CaseFaults.NotComputed, Grade.Warning, ("quantity", series.Quantity));
        }

        private double[] At(double celsius) =>
            Array.ConvertAll(Stops, stops => SourdoughGrowth.PerHour(new Lane1(celsius), new Lane1(stops), Curve).Value);
    }
}

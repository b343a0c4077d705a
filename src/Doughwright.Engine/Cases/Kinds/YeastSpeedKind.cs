using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>How fast a yeast works by temperature, against a temperature of reference; and where it begins, is quickest and stops.</summary>
internal sealed class YeastSpeedKind : CaseKind
{
    private const string Of = "of";

    private static readonly CaseQuantity Speed = new("speed", Dimension.Temperature, Dimension.Ratio, IsAgainst: true);
    private static readonly CaseQuantity Lowest = new("lowest temperature", null, Dimension.Temperature);
    private static readonly CaseQuantity Best = new("best temperature", null, Dimension.Temperature);
    private static readonly CaseQuantity Highest = new("highest temperature", null, Dimension.Temperature);

    public override string Name => "yeast speed";

    public override IReadOnlyList<string> Keys => [Of];

    public override IReadOnlyList<CaseQuantity> Quantities => [Speed, Lowest, Best, Highest];

    public override ICaseModel? Read(CaseConditions conditions) => conditions.NeedWord<Microbe>(Of) is null ? null : new BreadYeast();

    private enum Microbe
    {
        BreadYeast,
    }

    private sealed class BreadYeast : ICaseModel
    {
        private static readonly RiseParameters Parameters = Priors.For(Rehearser.OrdinaryLanes, new RisePriors()).Rise;

        public CaseAnswer Answer(CaseSeries series)
        {
            if (series.Of != Speed)
            {
                return CaseAnswer.Each(series, _ => series.Of == Lowest ? Parameters.Minimum : series.Of == Best ? Parameters.Optimum : Parameters.Maximum);
            }

            var reference = At(series.Reference!.Value);
            return reference.Any(rate => rate <= 0)
                ? CaseAnswer.Refused(CaseFaults.NotComputed, Grade.Warning, ("quantity", series.Quantity))
                : CaseAnswer.Each(series, celsius => [.. At(celsius).Zip(reference, (rate, known) => rate / known)]);
        }

        private static double[] At(double celsius) => [.. Enumerable.Range(0, Parameters.Lanes).Select(lane => CardinalRate.Relative(
            new Lane1(celsius), new Lane1(Parameters.Minimum[lane]), new Lane1(Parameters.Optimum[lane]), new Lane1(Parameters.Maximum[lane])).Value)];
    }
}

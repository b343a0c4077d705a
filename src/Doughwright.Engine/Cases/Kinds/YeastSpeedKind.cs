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

    public override ICaseModel? Read(CaseConditions conditions) => conditions.NeedWord<Microbe>(Of) switch
    {
        Microbe.BreadYeast => new BreadYeast(),
        Microbe.SourdoughYeast => new Sourdough(SourdoughGrowth.Yeast),
        Microbe.SourdoughBacteria => new Sourdough(SourdoughGrowth.Bacteria),
        _ => null,
    };

    private enum Microbe
    {
        BreadYeast,
        SourdoughYeast,
        SourdoughBacteria,
    }

    private static readonly RiseParameters Parameters = Priors.For(Rehearser.OrdinaryLanes, new RisePriors()).Rise;

    private static CaseAnswer Against(CaseSeries series, Func<double, double[]> at)
    {
        var reference = at(series.Reference!.Value);
        return reference.Any(rate => rate <= 0)
            ? CaseAnswer.Refused(CaseFaults.NotComputed, Grade.Warning, ("quantity", series.Quantity))
            : CaseAnswer.Each(series, celsius => [.. at(celsius).Zip(reference, (rate, known) => rate / known)]);
    }

    private sealed class BreadYeast : ICaseModel
    {
        public CaseAnswer Answer(CaseSeries series) => series.Of == Speed
            ? Against(series, At)
            : CaseAnswer.Each(series, _ => series.Of == Lowest ? Parameters.Minimum : series.Of == Best ? Parameters.Optimum : Parameters.Maximum);

        private static double[] At(double celsius) => [.. Enumerable.Range(0, Parameters.Lanes).Select(lane => CardinalRate.Relative(
            new Lane1(celsius), new Lane1(Parameters.Minimum[lane]), new Lane1(Parameters.Optimum[lane]), new Lane1(Parameters.Maximum[lane])).Value)];
    }

    /// <summary>The published curves; where growth stops is drawn as in a rehearsal. They have no lowest temperature: growth only becomes very slow.</summary>
    private sealed class Sourdough(GrowthCurve curve) : ICaseModel
    {
        private readonly double[] maximum = [.. Culture.StopsAt(curve, Parameters)];

        public CaseAnswer Answer(CaseSeries series) => series.Of == Speed ? Against(series, At)
            : series.Of == Lowest ? CaseAnswer.NoModel(series)
            : CaseAnswer.Each(series, _ => series.Of == Highest ? maximum : [.. maximum.Select(stops => stops - (curve.B / curve.C))]);

        private double[] At(double celsius) => [.. maximum.Select(stops => SourdoughGrowth.PerHour(new Lane1(celsius), new Lane1(stops), curve).Value)];
    }
}

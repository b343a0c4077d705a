using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>Yeast that multiplies in a dough of one temperature, as a share of the flour.</summary>
internal sealed class YeastGrowthKind : CaseKind
{
    private const string Dough = "dough";
    private const string Warmth = "temperature";

    private static readonly CaseQuantity Yeast = new("yeast", Dimension.Time, Dimension.Share);

    public override string Name => "yeast growth";

    public override IReadOnlyList<string> Keys => [Dough, Warmth];

    public override IReadOnlyList<CaseQuantity> Quantities => [Yeast];

    public override ICaseModel? Read(CaseConditions conditions)
    {
        var dough = conditions.NeedLines(Dough, ComponentKind.Dough);
        var celsius = conditions.Need(Warmth, Dimension.DoughWarmth);
        return dough is null || celsius is null ? null : new Counted(dough, Temperature.FromCelsius(celsius.Value));
    }

    private sealed record Counted(Component Dough, Temperature Temperature) : ICaseModel
    {
        private static readonly Duration Step = Duration.FromMinutes(2);

        public CaseAnswer Answer(CaseSeries series) => DoughOf.Rises(Dough) is var (dough, parameters)
            ? CaseAnswer.Each(series, minutes => minutes < Step.Minutes ? dough.FreshYeastGrams : After(dough, parameters, Duration.FromMinutes(minutes)))
            : CaseAnswer.Refused(CaseFaults.NotComputed, Grade.Warning, ("quantity", series.Quantity));

        private double[] After(RiseDough dough, RiseParameters parameters, Duration time)
        {
            var history = RiseHistory.Constant(Temperature, dough.Lanes, time + Step, Step);
            var pascals = PerLane.Same(101325, dough.Lanes).Values;
            var state = new RiseState(dough, parameters, parameters.Scale, pascals, history.StartCelsius);
            Rise.GrowthAfter(state, history, PerLane.Same(time.Minutes, dough.Lanes).Values);
            return [.. state.Yeast];
        }
    }
}

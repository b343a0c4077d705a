using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>Water activity of a solution by its strength, or of the liquid of a dough.</summary>
internal sealed class WaterActivityKind : CaseKind
{
    private const string Solution = "solution";
    private const string Dough = "dough";

    private static readonly CaseQuantity ByStrength = new("water activity by strength", Dimension.Part, Dimension.Ratio);
    private static readonly CaseQuantity OfDough = new("water activity", null, Dimension.Ratio);

    public override string Name => "water activity";

    public override IReadOnlyList<string> Keys => [Solution, Dough];

    public override IReadOnlyList<CaseQuantity> Quantities => [ByStrength, OfDough];

    public override ICaseModel? Read(CaseConditions conditions)
    {
        if (conditions.Clash(Solution, Dough))
        {
            return null;
        }

        if (conditions.Has(Solution))
        {
            return conditions.NeedWord<Dissolved>(Solution) is { } solute ? new Dissolving(solute) : null;
        }

        if (!conditions.Has(Dough))
        {
            conditions.TellOneOf(Solution, Dough);
            return null;
        }

        return conditions.MayLines(Dough, ComponentKind.Dough) is { } lines && DoughOf.Matter(lines) is { } matter ? new Liquid(matter) : null;
    }

    private enum Dissolved
    {
        Sucrose,
        Glucose,
        Glycerol,
        Salt,
    }

    private sealed record Dissolving(Dissolved Solute) : ICaseModel
    {
        public CaseAnswer Answer(CaseSeries series) => series.Of == ByStrength ? CaseAnswer.Each(series, percent => [At(percent)]) : CaseAnswer.NoModel(series);

        private double At(double percent)
        {
            var (water, solute) = (Mass.FromGrams(100 - percent), Mass.FromGrams(percent));
            return Solute switch
            {
                Dissolved.Sucrose => WaterActivity.Norrish(water, solute, Fermentation.Solute.Sucrose),
                Dissolved.Glucose => WaterActivity.Norrish(water, solute, Fermentation.Solute.Glucose),
                Dissolved.Glycerol => WaterActivity.Norrish(water, solute, Fermentation.Solute.Glycerol),
                _ => WaterActivity.SodiumChloride(solute.Grams / WaterActivity.GramsPerMoleSalt / water.Kilograms),
            };
        }
    }

    private sealed record Liquid(DoughMatter Matter) : ICaseModel
    {
        public CaseAnswer Answer(CaseSeries series) => series.Of == OfDough ? CaseAnswer.Each(series, _ => [Matter.WaterActivity]) : CaseAnswer.NoModel(series);
    }
}

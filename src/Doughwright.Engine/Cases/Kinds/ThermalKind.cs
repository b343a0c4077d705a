using Doughwright.Engine.Heat;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>How a food of known composition stores and conducts heat.</summary>
internal sealed class ThermalKind : CaseKind
{
    private const string Water = "water";
    private const string Protein = "protein";
    private const string Fat = "fat";
    private const string Carbohydrate = "carbohydrate";
    private const string Fibre = "fibre";
    private const string Ash = "ash";
    private const string Gas = "gas";

    private static readonly CaseQuantity Heat = new("specific heat", Dimension.Temperature, Dimension.SpecificHeat);
    private static readonly CaseQuantity Density = new("density", Dimension.Temperature, Dimension.Density);
    private static readonly CaseQuantity Conductivity = new("conductivity", Dimension.Temperature, Dimension.Conductivity);

    public override string Name => "thermal property";

    public override IReadOnlyList<string> Keys => [Water, Protein, Fat, Carbohydrate, Fibre, Ash, Gas];

    public override IReadOnlyList<CaseQuantity> Quantities => [Heat, Density, Conductivity];

    public override ICaseModel? Read(CaseConditions conditions)
    {
        var water = conditions.Need(Water, Dimension.Part);
        double Other(string key) => conditions.May(key, Dimension.Part) ?? 0;
        var (protein, fat, carbohydrate, fibre, ash) = (Other(Protein), Other(Fat), Other(Carbohydrate), Other(Fibre), Other(Ash));
        var gas = conditions.May(Gas, Dimension.Gas) ?? 0;
        return water is null ? null : new Food(
            Composition.Unknown with
            {
                Water = water,
                Protein = protein,
                Fat = fat,
                Carbohydrate = carbohydrate + fibre,
                Fibre = fibre,
                Ash = ash,
                Alcohol = 0,
            },
            gas / 100);
    }

    private sealed record Food(Composition Composition, double Gas) : ICaseModel
    {
        public CaseAnswer Answer(CaseSeries series) => series.Points.All(point => At(point.Place) is not null)
            ? CaseAnswer.Each(series, celsius => [Value(series.Of, At(celsius)!)])
            : CaseAnswer.Refused(CaseFaults.NotComputed, Grade.Warning, ("quantity", series.Quantity));

        private ThermalProperties? At(double celsius) => ThermalProperties.Of(Composition, Temperature.FromCelsius(celsius))?.WithGas(Gas);

        private static double Value(CaseQuantity quantity, ThermalProperties properties) =>
            quantity == Heat ? properties.SpecificHeat.JoulesPerGramKelvin
            : quantity == Density ? properties.Density.KilogramsPerCubicMetre
            : properties.Conductivity.WattsPerMetreKelvin;
    }
}

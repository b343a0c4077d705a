using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>How a food stores and conducts heat.</summary>
internal sealed record ThermalProperties(SpecificHeat SpecificHeat, Density Density, Conductivity Conductivity)
{
    /// <summary>Conductivity of the gas in dough, taken as air at 25 °C, in W/(m K). Source: handbook-heats.</summary>
    private const double GasConductivity = 0.026;

    /// <summary>What the constituents must add up to, in g per 100 g, before an unknown alcohol content can no longer matter.</summary>
    private const double AccountedFor = 99;

    /// <summary>Heat capacity of one cubic metre, in J/(m³ K).</summary>
    public double JoulesPerCubicMetreKelvin => 1000 * SpecificHeat.JoulesPerGramKelvin * Density.KilogramsPerCubicMetre;

    /// <summary>Thermal diffusivity k/(ρ c), in m²/s.</summary>
    public double DiffusivitySquareMetresPerSecond => Conductivity.WattsPerMetreKelvin / JoulesPerCubicMetreKelvin;

    /// <summary>
    /// Properties of a gas-free mixture: c = Σ x c; 1/ρ = Σ x/ρ; k = Σ v k with v the volume fraction (conduction side by side, an upper
    /// bound that fits moist food). The composition is brought to a sum of one first. Null when a constituent is unknown.
    /// </summary>
    /// <remarks>
    /// Valid -40 to 150 °C. Against measured conductivities good to about 10 %. An unknown alcohol content is let pass only when the rest
    /// already accounts for 99 g in 100 g; a known one counts with the properties of ethanol at 20 °C. Source: choi-okos-1986.
    /// </remarks>
    public static ThermalProperties? Of(Composition composition, Temperature temperature)
    {
        if (composition is not
            { Water: { } water, Protein: { } protein, Fat: { } fat, Carbohydrate: { } carbohydrate, Fibre: { } fibre, Ash: { } ash })
        {
            return null;
        }

        var withoutAlcohol = water + protein + fat + carbohydrate + ash;
        if (composition.Alcohol is null && withoutAlcohol < AccountedFor)
        {
            return null;
        }

        var alcohol = composition.Alcohol ?? 0;
        var total = withoutAlcohol + alcohol;
        if (!(total > 0))
        {
            return null;
        }

        var sum = new Sum(temperature);
        sum.Add(FoodConstituent.Water, water / total);
        sum.Add(FoodConstituent.Protein, protein / total);
        sum.Add(FoodConstituent.Fat, fat / total);
        sum.Add(FoodConstituent.Carbohydrate, (carbohydrate - fibre) / total);
        sum.Add(FoodConstituent.Fibre, fibre / total);
        sum.Add(FoodConstituent.Ash, ash / total);
        sum.Add(Ethanol.Properties, alcohol / total);
        return sum.Result();
    }

    /// <summary>The same food with gas cells in it: the gas takes room and hinders heat, and weighs nothing.</summary>
    /// <remarks>
    /// ρ' = (1 - φ) ρ; k' = k [2k + g - 2φ(k - g)] / [2k + g + φ(k - g)] with g the conductivity of the gas (Maxwell-Eucken, gas
    /// dispersed in dough). Valid for φ from 0 to below 1; above 0.8 the cells touch and the formula is a rough guide. Source:
    /// maxwell-eucken.
    /// </remarks>
    /// <param name="gasFraction">Share of the volume that is gas, φ.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fraction is not in 0 to 0.99.</exception>
    public ThermalProperties WithGas(double gasFraction)
    {
        Require.Within(gasFraction, 0, 0.99, "Gas fraction");
        var dough = Conductivity.WattsPerMetreKelvin;
        var difference = dough - GasConductivity;
        var series = (2 * dough) + GasConductivity;
        var conductivity = dough * (series - (2 * gasFraction * difference)) / (series + (gasFraction * difference));
        return new(
            SpecificHeat,
            Density.FromKilogramsPerCubicMetre((1 - gasFraction) * Density.KilogramsPerCubicMetre),
            Conductivity.FromWattsPerMetreKelvin(conductivity));
    }

    private struct Sum(Temperature temperature)
    {
        private double heat;
        private double volume;
        private double conductance;

        public void Add(FoodConstituent constituent, double massFraction) => Add(
            new ThermalProperties(
                ChoiOkos.SpecificHeatOf(constituent, temperature),
                ChoiOkos.DensityOf(constituent, temperature),
                ChoiOkos.ConductivityOf(constituent, temperature)),
            massFraction);

        public void Add(ThermalProperties part, double massFraction)
        {
            var partVolume = massFraction / part.Density.KilogramsPerCubicMetre;
            heat += massFraction * part.SpecificHeat.JoulesPerGramKelvin;
            volume += partVolume;
            conductance += partVolume * part.Conductivity.WattsPerMetreKelvin;
        }

        public readonly ThermalProperties Result() => new(
            SpecificHeat.FromJoulesPerGramKelvin(heat),
            Density.FromKilogramsPerCubicMetre(1 / volume),
            Conductivity.FromWattsPerMetreKelvin(conductance / volume));
    }
}

using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Fermentation;

/// <summary>Everything of a lane that does not change while it rises, gathered once so that the time loop only reads it.</summary>
internal sealed class RiseCoefficients
{
    /// <summary>
    /// Gas of bread yeast without stress at 25 °C, mol per hour and g of fresh yeast: 81 mL/h. Error: 0.35 in ln between yeasts.
    /// Source: aem-leavening-table.
    /// </summary>
    public const double MolesPerHourAndGram = 3.31e-3;

    /// <summary>Hexose used per mol of carbon dioxide at 95 % yield, g: C6H12O6 gives two. Source: fermentation-balance.</summary>
    public const double HexoseGramsPerMole = 180.16 / (2 * 0.95);

    private const double RateReferenceCelsius = 25;
    private const double GrowthReferenceCelsius = 27;

    /// <summary>g of fresh yeast per 100 g of flour.</summary>
    private const double LeastRoom = 1e-6;

    public RiseCoefficients(RiseDough dough, RiseParameters parameters, ReadOnlySpan<double> scale, ReadOnlySpan<double> pascals)
    {
        Minimum = parameters.Minimum;
        Optimum = parameters.Optimum;
        Maximum = dough.Culture?.MaximumCelsius ?? parameters.Maximum;
        HalfSubstrate = parameters.HalfSubstrate;
        GrowthLag = dough.Culture is null ? parameters.GrowthLag : new double[dough.Lanes];
        CrowdedExponent = parameters.CrowdedExponent;
        IsCulture = dough.Culture is not null;
        YeastAtFirst = dough.FreshYeastGrams;
        Water = dough.WaterGrams;
        GasFree = dough.GasFreeMillilitres;

        var lanes = dough.Lanes;
        (UseRate, Maltose, GrowthRate, GrowthPerRate) = (new double[lanes], new double[lanes], new double[lanes], new double[lanes]);
        (PerGrowthRoom, PerGrowthToCeiling) = (new double[lanes], new double[lanes]);
        (Volume, PerVolume, GasPerKelvin, AirAtFirst) = (new double[lanes], new double[lanes], new double[lanes], new double[lanes]);
        for (var lane = 0; lane < lanes; lane++)
        {
            var cardinal = new CardinalTemperatures(
                Temperature.FromCelsius(Minimum[lane]), Temperature.FromCelsius(Optimum[lane]), Temperature.FromCelsius(parameters.Maximum[lane]));
            var reference = dough.Culture?.PerHour(lane, RateReferenceCelsius) ?? CardinalRate.At(Temperature.FromCelsius(RateReferenceCelsius), cardinal);
            var stress = dough.OsmoticFactor[lane] * dough.SpiceFactor[lane];
            var scaled = Require.Within(scale[lane], 0, 1e7, "Rate against the book") * MolesPerHourAndGram * stress;
            UseRate[lane] = HexoseGramsPerMole * scaled / reference;
            // Some supply, so that sugar never comes to exactly nought.
            Maltose[lane] = Require.Within(parameters.Maltose[lane], 1e-9, 100, "Maltose from starch") / reference;
            Require.Within(HalfSubstrate[lane], 1e-3, 100, "Sugar at half speed");
            GrowthRate[lane] = parameters.GrowthRate[lane] * dough.OsmoticFactor[lane];
            GrowthPerRate[lane] = 1 / CardinalRate.At(Temperature.FromCelsius(GrowthReferenceCelsius), cardinal);
            PerGrowthRoom[lane] = 1 / parameters.GrowthRoom[lane];
            if (dough.Culture is { } culture)
                GrowAs(culture, lane);
            PerGrowthToCeiling[lane] = 1 / (Require.Within(parameters.Ceiling[lane], 1.01, 100, "Highest growth") - 1);
            var air = Require.Within(parameters.Void[lane], 0, 0.9, "Share of air");
            Volume[lane] = GasFree[lane] / (1 - air);
            PerVolume[lane] = 1 / Volume[lane];
            GasPerKelvin[lane] = GasVolume.GasConstantMillilitres / Require.Within(pascals[lane], 1e4, 1e6, "Air pressure");
            AirAtFirst[lane] = air * Volume[lane];
        }
    }

    /// <summary>
    /// The yeast of a sourdough: its rate is its growth in 1/h, and gas and maltose follow it. It grows from the first minute, up to the density of
    /// a ripe sour; salt does not slow its growth. Source: gaenzle-1998.
    /// </summary>
    private void GrowAs(Culture culture, int lane)
    {
        (GrowthRate[lane], GrowthPerRate[lane]) = (1, 1);
        // A dough that is all ripe sour has no room left, and division by nought no answer.
        PerGrowthRoom[lane] = 1 / Math.Max(LeastRoom, culture.FreshAtMost[lane] - YeastAtFirst[lane]);
    }

    /// <summary>Whether the rate is the growth of a sourdough's yeast (<see cref="SourdoughGrowth"/>), and not that of bread yeast (<see cref="CardinalRate"/>).</summary>
    public bool IsCulture { get; }

    public double[] Minimum { get; }

    public double[] Optimum { get; }

    public double[] Maximum { get; }

    /// <summary>
    /// Hexose used per hour, unit of effective dose and unit of relative rate, g: scale, osmotic and spice factors included.
    /// </summary>
    public double[] UseRate { get; }

    /// <summary>Sugar that starch yields per hour and unit of relative rate, g.</summary>
    public double[] Maltose { get; }

    public double[] HalfSubstrate { get; }

    /// <summary>1/h at 27 °C, osmotic factor included.</summary>
    public double[] GrowthRate { get; }

    /// <summary>One over the relative rate at 27 °C, to which growth is referred.</summary>
    public double[] GrowthPerRate { get; }

    /// <summary>One over the yeast that grows at most, per g.</summary>
    public double[] PerGrowthRoom { get; }

    /// <summary>h at 27 °C.</summary>
    public double[] GrowthLag { get; }

    public double[] CrowdedExponent { get; }

    public double[] YeastAtFirst { get; }

    /// <summary>One over (highest growth less 1).</summary>
    public double[] PerGrowthToCeiling { get; }

    /// <summary>mL.</summary>
    public double[] Water { get; }

    /// <summary>mL.</summary>
    public double[] GasFree { get; }

    /// <summary>Volume after mixing, mL.</summary>
    public double[] Volume { get; }

    /// <summary>One over the volume after mixing, per mL.</summary>
    public double[] PerVolume { get; }

    /// <summary>R/P, mL per mol and K.</summary>
    public double[] GasPerKelvin { get; }

    /// <summary>Air after mixing, mL at the pressure and temperature of the beginning.</summary>
    public double[] AirAtFirst { get; }
}

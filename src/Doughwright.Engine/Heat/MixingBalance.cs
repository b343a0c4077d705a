namespace Doughwright.Engine.Heat;

/// <summary>
/// The heat balance of a mix: what the parts and the bowl hold together decides how warm they become, and handling adds its rise. Built
/// once from the parts; the questions then allocate nothing and are asked once per lane.
/// </summary>
/// <remarks>
/// Σ m c t + C_bowl t_bowl + Λ Σ F s(t) is kept, with Λ the melting heat of fat and s the melted share; mixed = the temperature that holds
/// the same, + rise. Steam and heat lost to the room while mixing are not in it. Source: heat-balance.
/// </remarks>
internal sealed class MixingBalance
{
    private readonly MixPart[] parts;
    private readonly double[] capacities;
    private readonly double vesselCapacity;
    private readonly FatMelting melting;
    private readonly double totalCapacity;
    private readonly double totalFat;

    /// <param name="parts">In the order in which they are added.</param>
    /// <param name="vesselJoulesPerKelvin">Heat capacity of the bowl; nought when there is none.</param>
    /// <exception cref="ArgumentOutOfRangeException">The vessel has a negative heat capacity.</exception>
    public MixingBalance(IReadOnlyList<MixPart> parts, double vesselJoulesPerKelvin, FatMelting melting)
    {
        this.parts = [.. parts];
        this.melting = melting;
        capacities = Array.ConvertAll(this.parts, part => part.Mass * part.SpecificHeat);
        vesselCapacity = vesselJoulesPerKelvin >= 0
            ? vesselJoulesPerKelvin
            : throw new ArgumentOutOfRangeException(nameof(vesselJoulesPerKelvin), vesselJoulesPerKelvin, "Must not be below 0 J/K.");
        var capacityOfParts = capacities.Sum();
        HoldsSomething = capacityOfParts > 0;
        totalCapacity = capacityOfParts + vesselCapacity;
        totalFat = this.parts.Sum(part => part.MeltingFat.Grams);
    }

    public IReadOnlyList<MixPart> Parts => parts;

    /// <summary>Whether anything with mass goes in. Where nothing does, no question about temperatures has an answer, and asking one throws.</summary>
    public bool HoldsSomething { get; }

    /// <summary>Heat capacity of the bowl, in J/K.</summary>
    public double VesselJoulesPerKelvin => vesselCapacity;

    /// <summary>Heat capacity of the parts and the bowl, in J/K.</summary>
    public double JoulesPerKelvin => totalCapacity;

    /// <summary>How warm the mix becomes, in °C.</summary>
    /// <param name="partCelsius">Temperatures of the parts, in the order of adding.</param>
    public double Mixed(ReadOnlySpan<double> partCelsius, in MixingConditions conditions) =>
        BeforeRise(partCelsius, conditions) + conditions.RiseKelvins;

    /// <summary>
    /// The handling rise, in K, that makes the mix as warm as it was measured. Not judged here: see <see cref="HandlingRise"/>.
    /// </summary>
    public double RiseFor(double measuredCelsius, ReadOnlySpan<double> partCelsius, in MixingConditions conditions) =>
        measuredCelsius - BeforeRise(partCelsius, conditions);

    /// <summary>
    /// The one temperature, in °C, that all free parts must have for the mix to become as warm as wanted. Nothing is clamped: the answer
    /// may lie below freezing or above boiling, which the caller judges.
    /// </summary>
    /// <param name="free">Indexes of the free parts, at least one with mass, each once.</param>
    /// <param name="partCelsius">Temperatures of all parts; those of free parts are not read.</param>
    public double Solve(double wantedCelsius, ReadOnlySpan<int> free, ReadOnlySpan<double> partCelsius, in MixingConditions conditions)
    {
        var needed = HeatNeeded(wantedCelsius, conditions) - (vesselCapacity * conditions.VesselCelsius);
        var freeCapacity = 0.0;
        var freeFat = 0.0;
        for (var index = 0; index < parts.Length; index++)
        {
            if (free.Contains(index))
            {
                freeCapacity += capacities[index];
                freeFat += parts[index].MeltingFat.Grams;
            }
            else
            {
                needed -= HeatOf(index, partCelsius[index], conditions);
            }
        }

        return melting.CelsiusOf(freeCapacity, freeFat * conditions.MeltingJoulesPerGram, needed);
    }

    /// <summary>
    /// How much of a water part must be ice at 0 °C, in g, for the mix to become as warm as wanted; the rest of it comes at its
    /// temperature. Nothing is clamped: a negative answer means that the water is cold enough without ice, one above the water's mass
    /// that ice alone does not do it.
    /// </summary>
    /// <remarks>(W - m) c t_tap - m L = heat still needed, with m the ice and L its melting heat. Source: ice-melting.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The mix is wanted at or below 0 °C, where ice does not melt.</exception>
    public double SolveIce(double wantedCelsius, int water, ReadOnlySpan<double> partCelsius, in MixingConditions conditions)
    {
        if (!(wantedCelsius - conditions.RiseKelvins > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(wantedCelsius), wantedCelsius, "Ice melts in the mix only above 0 °C.");
        }

        var surplus = Heat(partCelsius, conditions) - HeatNeeded(wantedCelsius, conditions);
        var waterHeat = parts[water].SpecificHeat.JoulesPerGramKelvin;
        return surplus / ((waterHeat * partCelsius[water]) + IceInWater.MeltingJoulesPerGram);
    }

    /// <summary>What happens in the bowl as the parts are added one by one. Handling comes last and is not in it.</summary>
    public MixingTrace Trace(ReadOnlySpan<double> partCelsius, in MixingConditions conditions)
    {
        var additions = new Addition[parts.Length];
        var capacity = vesselCapacity;
        var fat = 0.0;
        var heat = vesselCapacity * conditions.VesselCelsius;
        var warmest = double.NegativeInfinity;
        for (var index = 0; index < parts.Length; index++)
        {
            capacity += capacities[index];
            fat += parts[index].MeltingFat.Grams;
            heat += HeatOf(index, partCelsius[index], conditions);
            warmest = Math.Max(warmest, partCelsius[index]);
            // Until something with mass is in, there is nothing whose temperature could be told.
            var mean = capacity > 0 ? melting.CelsiusOf(capacity, fat * conditions.MeltingJoulesPerGram, heat) : partCelsius[index];
            additions[index] = new(parts[index].Id, partCelsius[index], mean, warmest);
        }

        return new(additions);
    }

    /// <summary>Heat that one part gives on its way to another temperature, melting included, in J; negative when it takes.</summary>
    public double Gives(int index, double fromCelsius, double toCelsius, in MixingConditions conditions) =>
        HeatOf(index, fromCelsius, conditions) - HeatOf(index, toCelsius, conditions);

    /// <summary>Heat that the whole bowl takes from one temperature to another, melting included, in J.</summary>
    public double Takes(double fromCelsius, double toCelsius, in MixingConditions conditions)
    {
        var meltingJoules = totalFat * conditions.MeltingJoulesPerGram;
        return melting.HeatContent(totalCapacity, meltingJoules, toCelsius) - melting.HeatContent(totalCapacity, meltingJoules, fromCelsius);
    }

    private double BeforeRise(ReadOnlySpan<double> partCelsius, in MixingConditions conditions) =>
        melting.CelsiusOf(Capacity(), totalFat * conditions.MeltingJoulesPerGram, Heat(partCelsius, conditions));

    private double HeatNeeded(double wantedCelsius, in MixingConditions conditions) => melting.HeatContent(
        Capacity(), totalFat * conditions.MeltingJoulesPerGram, wantedCelsius - conditions.RiseKelvins);

    private double Capacity() => HoldsSomething ? totalCapacity : throw new InvalidOperationException("A mix of nothing has no temperature.");

    private double Heat(ReadOnlySpan<double> partCelsius, in MixingConditions conditions)
    {
        var heat = vesselCapacity * conditions.VesselCelsius;
        for (var index = 0; index < parts.Length; index++)
        {
            heat += HeatOf(index, partCelsius[index], conditions);
        }

        return heat;
    }

    private double HeatOf(int index, double celsius, in MixingConditions conditions) => melting.HeatContent(
        capacities[index], parts[index].MeltingFat.Grams * conditions.MeltingJoulesPerGram, celsius);
}

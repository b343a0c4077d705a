namespace Doughwright.Engine.Heat;

/// <summary>What besides the parts decides how warm a mix becomes; one value per lane.</summary>
/// <param name="VesselCelsius">Temperature of the bowl before anything is in it.</param>
/// <param name="RiseKelvins">Handling rise, added to the whole bowl at the end. See <see cref="HandlingRise"/>.</param>
/// <param name="MeltingJoulesPerGram">Melting heat of the fat. See <see cref="FatMelting"/>.</param>
internal readonly record struct MixingConditions(double VesselCelsius, double RiseKelvins, double MeltingJoulesPerGram);

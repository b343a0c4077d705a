using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>What a risen piece brings to the oven.</summary>
/// <param name="JoulesPerGramKelvin">Its heat capacity over its mass.</param>
/// <param name="GasFreeMillilitresPerGram">What a gram of it measures without gas.</param>
/// <param name="VolumePerGasFree">Its volume as it goes in over that without gas, per lane.</param>
/// <param name="Start">Its temperature, per lane, in °C.</param>
internal sealed record OvenLoad(Mass Mass, double JoulesPerGramKelvin, double GasFreeMillilitresPerGram, PerLane VolumePerGasFree, PerLane Start);

using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>One thing that goes into a mix, without its temperature, which differs from lane to lane.</summary>
/// <param name="Id">Id of the line.</param>
/// <param name="MeltingFat">Fat in it that melts in the range of <see cref="FatMelting"/>: that of butter, not oil.</param>
internal sealed record MixPart(string Id, Mass Mass, SpecificHeat SpecificHeat, Mass MeltingFat = default);

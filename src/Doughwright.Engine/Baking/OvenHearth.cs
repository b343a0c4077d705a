namespace Doughwright.Engine.Baking;

/// <summary>A slab that a piece stands on, hot from below and from what it holds.</summary>
/// <param name="Share">Of the piece's surface, what lies on it, 0 to 1. Counts along one radius; a section knows its own under face.</param>
/// <param name="Contact">Between slab and piece, W/(m² K): a thin film of air, flour and semolina.</param>
/// <param name="Thick">m.</param>
/// <param name="Conductivity">W/(m K).</param>
/// <param name="HeatCapacity">J/(m³ K).</param>
/// <param name="Below">From the oven to its under side, W/(m² K).</param>
/// <param name="CoolerBy">How much cooler than the oven it is when the piece goes in, K.</param>
internal sealed record OvenHearth(double Share, double Contact, double Thick, double Conductivity, double HeatCapacity, double Below, double CoolerBy = 0);

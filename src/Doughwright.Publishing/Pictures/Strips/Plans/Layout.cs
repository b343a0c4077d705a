using Doughwright.Publishing.Pictures.Strips.Geometry;

namespace Doughwright.Publishing.Pictures.Strips.Plans;

/// <summary>A plan with its size: mapping and lanes.</summary>
internal sealed record Layout(Plan Plan, Frame Frame, IReadOnlyList<Lane> Lanes);

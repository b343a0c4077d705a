using Doughwright.Engine.Quantities;

namespace Doughwright.Publishing.Pictures.Strips.Plans;

/// <summary>Something put onto the dough straight from its packet: plain milk with a brush.</summary>
internal sealed record PlannedWash(PlannedStep Step, string Component, string Name, Mass? Mass);

using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Shapes;

/// <summary>One way that heat takes through a piece: 1 across a layer, 2 across a stick, 3 into a ball.</summary>
/// <param name="Reach">From the middle to the outside.</param>
internal readonly record struct HeatWay(int Dimensions, Length Reach);

namespace Doughwright.Publishing.Pictures.Strips.Plans;

/// <summary>How lanes are stacked.</summary>
/// <param name="First">Height of the lower side of the lowest lane.</param>
/// <param name="Gap">Between the sides of two lanes: room for what is written there.</param>
/// <param name="OverDough">Between the dough and a lane that runs over it.</param>
/// <param name="Reach">Along the bench, what is written at a strand may be so long, in the units of the picture.</param>
internal sealed record LaneRoom(double First, double Gap, double OverDough, double Reach);

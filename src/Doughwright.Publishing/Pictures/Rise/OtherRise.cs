using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Publishing.Pictures.Rise;

/// <summary>The same step in another kitchen, drawn dashed beside the own curve.</summary>
/// <param name="Name">Of the kitchen.</param>
/// <param name="Time">How long the step takes there; null when it never gets there.</param>
internal sealed record OtherRise(string Name, RiseCurve Curve, Estimate<Duration>? Time);

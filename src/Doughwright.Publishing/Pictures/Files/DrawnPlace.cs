using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Warming;

namespace Doughwright.Publishing.Pictures.Files;

/// <summary>A place made warm that is to be drawn.</summary>
/// <param name="Step">Id of the step that the dough waits in.</param>
/// <param name="Kind">Null for the one that is told first.</param>
internal sealed record DrawnPlace(string Step, Temperature Target, PlaceKind? Kind, PlaceWish Wish);

namespace Doughwright.Publishing.Pictures.Family;

/// <summary>A recipe with the states that were kept, and what has grown from it.</summary>
/// <param name="Title">Of the recipe.</param>
/// <param name="Knots">In order, the earliest first; at least one.</param>
/// <param name="Offshoots">In any order.</param>
internal sealed record FamilyLine(string Title, IReadOnlyList<FamilyKnot> Knots, IReadOnlyList<FamilyOffshoot> Offshoots);

/// <summary>A state that was kept, or the recipe as it is now.</summary>
/// <param name="Day">The day it was kept.</param>
/// <param name="Said">Its standing in a word or a few; may be empty.</param>
/// <param name="IsPicked">Whether it is one of those that the page is about.</param>
internal sealed record FamilyKnot(string Day, string Said, bool IsPicked);

/// <summary>A recipe that has grown from this one.</summary>
/// <param name="But">What it differs by most; may be empty.</param>
/// <param name="At">Where it leaves the rope: the number of a knot, or between two for a state that was not kept.</param>
internal sealed record FamilyOffshoot(string Title, string But, double At);

using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Publishing.Pages.Rooms;

/// <summary>How the rises of a recipe go by the warmth of the room.</summary>
/// <param name="Steps">The rises, in the order of the recipe.</param>
/// <param name="Rows">The coldest room first.</param>
/// <param name="Held">The dough temperature that is kept in every room; null when it is not known or nothing can keep it.</param>
internal sealed record RoomTable(IReadOnlyList<RehearsedStep> Steps, IReadOnlyList<RoomRow> Rows, Temperature? Held);

/// <summary>One room.</summary>
/// <param name="IsHere">Whether it is the room that the page is written for.</param>
/// <param name="Kept">What keeps the dough as warm there; null when the dough goes as it is written.</param>
/// <param name="Times">One for each rise of the table.</param>
internal sealed record RoomRow(Temperature Air, bool IsHere, Lever? Kept, IReadOnlyList<RoomTime> Times);

/// <summary>What goes in warmer or colder.</summary>
/// <param name="Lines">Ids of lines of the dough.</param>
/// <param name="Ice">Of the water, where ice is needed.</param>
internal sealed record Lever(IReadOnlyList<string> Lines, Temperature? Warmth, Mass? Ice);

/// <summary>How long a rise takes in a room.</summary>
/// <param name="Time">Null when it never ends there or cannot be told.</param>
/// <param name="Never">Whether it never ends there.</param>
internal sealed record RoomTime(Estimate<Duration>? Time, bool Never);

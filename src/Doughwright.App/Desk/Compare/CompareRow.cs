namespace Doughwright.App.Desk.Compare;

/// <summary>A row of the table of two kitchens, in finished words.</summary>
/// <param name="Cue">What a person sees when the step is done; null where it has none.</param>
/// <param name="Moves">The difference; empty where there is none to tell.</param>
/// <param name="IsSame">Whether both are shown the same.</param>
internal sealed record CompareRow(string Name, string? Cue, CompareCell First, CompareCell Second, string Moves, bool IsSame, string Because);

/// <summary>A figure and what stands under it: its range, or what the oven is set to.</summary>
internal sealed record CompareCell(Rich Figure, IReadOnlyList<Rich> Under);

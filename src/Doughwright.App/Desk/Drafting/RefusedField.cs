namespace Doughwright.App.Desk.Drafting;

/// <summary>What was typed into a field and not taken. The last good value is in force meanwhile.</summary>
/// <param name="Reasons">In words, with what to do.</param>
public sealed record RefusedField(string Typed, IReadOnlyList<string> Reasons);

namespace Doughwright.Engine.Ingredients;

/// <summary>Where a row of the larder comes from.</summary>
/// <param name="Source">Source id (Sources).</param>
/// <param name="Record">Number of the record in that source, when it has one.</param>
/// <param name="Obtained">How: "read", "proxy" (another row stands for it) or "by definition".</param>
/// <param name="Date">Date of the source's edition, year and month.</param>
/// <param name="Note">What was derived or chosen; empty when nothing was.</param>
public sealed record Evidence(string Source, string? Record, string Obtained, string? Date, string Note);

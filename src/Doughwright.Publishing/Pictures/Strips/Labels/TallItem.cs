namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>One thing written beside the tall strip, in two lines.</summary>
/// <param name="Step">Id of the step it tells of; null for the outcome.</param>
internal sealed record TallItem(double Minute, string? Step, string Name, string Value, bool IsCue = false);

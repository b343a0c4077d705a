namespace Doughwright.Engine.Cases;

/// <summary>What may be measured in cases of a kind.</summary>
/// <param name="Name">As the text says it: "core temperature".</param>
/// <param name="Along">What it is measured along; null for a single figure.</param>
/// <param name="IsAgainst">Whether its figures are given against those at a reference: twice as fast as at 20 °C.</param>
internal sealed record CaseQuantity(string Name, Dimension? Along, Dimension Of, bool IsAgainst = false);

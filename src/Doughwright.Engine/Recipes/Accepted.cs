namespace Doughwright.Engine.Recipes;

/// <summary>A finding that the author has seen and accepts. It expires when its place changes.</summary>
/// <param name="FindingId">Kind and place: "salt-high@parts.dough.salt".</param>
/// <param name="Reason">Why, as written.</param>
/// <param name="PlaceMark">Fingerprint of the place as it stood when it was accepted.</param>
public sealed record Accepted(string FindingId, string Reason, string PlaceMark, Position Position);

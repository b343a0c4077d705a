using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Remedies;

/// <summary>The findings about a recipe, those its author has accepted apart.</summary>
/// <param name="Open">What stands, with what became of acceptances that do not hold.</param>
/// <param name="Accepted">What the author has seen and accepts, each with the reason.</param>
public sealed record Judgement(IReadOnlyList<Finding> Open, IReadOnlyList<(Finding Finding, string Reason)> Accepted);

namespace Doughwright.Engine.Recipes;

/// <summary>What a reader does who lacks something: "without a thermometer, wait until it feels barely warm".</summary>
/// <param name="What">The tool or ingredient, as written.</param>
/// <param name="Words">What to do, prose with live values.</param>
public sealed record Without(string What, string Words, Position Position);

using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>What a case is about, put together as a recipe, so that the rehearser itself answers.</summary>
internal static class CaseRecipe
{
    public const string Mix = "mix";

    public static Recipe Of(Component part, Kitchen home, IReadOnlyList<Step> steps, Make? make = null) =>
        new() { Title = part.Name, Home = home, Components = [part], Steps = steps, Make = make };

    public static Step Step(string id, StepKind kind, Component part) =>
        new() { Id = id, Name = id, Kind = kind, Component = part.Id, Position = Position.None };

    /// <summary>The part in another mass, line by line.</summary>
    public static Component Weighing(Component part, Mass mass)
    {
        var written = part.Lines.Sum(line => line.Mass?.Grams ?? 0);
        return written > 0
            ? part with { Lines = [.. part.Lines.Select(line => line with { Mass = line.Mass * (mass.Grams / written) })] }
            : part;
    }
}

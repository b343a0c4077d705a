using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>Water or milk written hotter than it can be in this kitchen. It goes in boiling. Source: iapws-if97.</summary>
internal static class TooHotToBeLiquid
{
    public static IEnumerable<Finding> Of(RunResult here)
    {
        var stage = here.Stage;
        foreach (var component in stage.Formula.Components)
        {
            foreach (var line in component.Lines.Where(line => line.Role is Role.Water or Role.Liquid))
            {
                if (line.Source.Warmth.Stated is { } celsius && celsius > stage.Boils)
                {
                    yield return new()
                    {
                        Kind = "liquid-above-boiling",
                        Grade = Grade.Warning,
                        Place = $"parts.{component.Id}.{line.Id}",
                        Position = line.Source.Position,
                        Arguments = new Dictionary<string, object>
                        {
                            ["name"] = line.Name,
                            ["celsius"] = celsius,
                            ["boils"] = stage.Boils,
                            ["altitude"] = stage.Kitchen.Altitude,
                        },
                    };
                }
            }
        }
    }
}

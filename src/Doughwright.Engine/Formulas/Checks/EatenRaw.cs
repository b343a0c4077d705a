using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>Raw egg or raw flour that goes on after the last heat, so that it is eaten raw. Source: home-safety.</summary>
internal static class EatenRaw
{
    private static readonly string[] MadeSafe = ["pasteurised", "pasteurized", "boiled", "cooked", "baked", "toasted", "roasted", "heat-treated"];

    public static IEnumerable<Finding> Check(Formula formula)
    {
        foreach (var part in Finishing.Of(formula).Select(put => put.Part).DistinctBy(part => part.Id))
        {
            foreach (var line in part.Lines.Where(line => line.UsesComponent is null && !IsMadeSafe(line)))
            {
                if (IsRawEgg(line))
                {
                    yield return (part, line).About("raw-egg-eaten", Grade.Warning, ("egg", line.Name), ("component", part.Name)) with { Safety = true };
                }
                else if (line.Role == Role.Flour)
                {
                    yield return (part, line).About("raw-flour-eaten", Grade.Warning, ("flour", line.Name), ("component", part.Name)) with { Safety = true };
                }
            }
        }
    }

    /// <summary>Whether it is egg that nothing has made safe before it came into the part.</summary>
    public static bool IsRawEgg(LineFormula line) => line is { Role: Role.Egg, UsesComponent: null } && !IsMadeSafe(line);

    private static bool IsMadeSafe(LineFormula line) =>
        MadeSafe.Any(word => line.Source.Is(word) || line.Name.Contains(word, StringComparison.OrdinalIgnoreCase));
}

using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// Salt of coarse crystals by the spoon: brand against brand it holds from about half to nearly all of what fine salt weighs, and it is
/// reckoned as fine salt. Common practice, no source.
/// </summary>
internal static class SaltBySpoon
{
    private static readonly string[] Coarse = ["kosher", "coarse", "flaky", "flake", "flakes", "rock", "crystals"];

    public static IEnumerable<Finding> Check(Formula formula) => formula.Lines()
        .Where(at => at.Line is { Role: Role.Salt, UsesComponent: null } && at.Line.Source is { Household: not null, Mass: not null } && IsCoarse(at.Line))
        .Select(at => at.About("salt-crystals-differ", Grade.Hint, ("name", at.Line.Name), ("mass", at.Line.Mass)));

    private static bool IsCoarse(LineFormula line)
    {
        var said = string.Join(" ", line.Source.Conditions.Prepend(line.Name));
        return Array.Exists(Coarse, word => Phrase.Says(said, word));
    }
}

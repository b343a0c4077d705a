using Doughwright.Engine.Formulas.Checks;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>A swap that brings more alcohol into the dough than its yeast bears.</summary>
internal static class AlcoholNotes
{
    public static IEnumerable<Finding> Of(SwapChange change)
    {
        var before = AlcoholInDough.Check(change.Before).Select(finding => finding.Id).ToHashSet();
        return AlcoholInDough.Check(change.After).Where(finding => !before.Contains(finding.Id));
    }
}

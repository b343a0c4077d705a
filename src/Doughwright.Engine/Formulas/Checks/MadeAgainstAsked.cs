using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>The dough does not come to the pieces the recipe says it makes.</summary>
internal static class MadeAgainstAsked
{
    // Scaling by hand is not closer than this.
    private const double Tolerance = 0.02;

    public static IEnumerable<Finding> Check(Formula formula)
    {
        // A sum without one of its masses is no weight of the dough, and its lack has been told where it stands.
        if (formula.Recipe.Make is not { Pieces: > 0, PieceMass.Grams: > 0 } make || formula.Dough <= Mass.Zero || !formula.IsMassKnown)
        {
            yield break;
        }

        var asked = make.PieceMass * make.Pieces;
        if (Math.Abs((formula.Dough / asked) - 1) > Tolerance)
        {
            yield return Report.Make(
                "make-differs",
                Grade.Warning,
                "make",
                Position.None,
                ("dough", formula.Dough),
                ("pieces", make.Pieces),
                ("what", make.What),
                ("asked", asked),
                ("each", formula.Dough / make.Pieces));
        }
    }
}

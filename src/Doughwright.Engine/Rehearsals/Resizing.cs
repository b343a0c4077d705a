using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals;

/// <summary>Brings a recipe to another size: its quantities, and what becomes of what was measured in the old one.</summary>
public static class Resizing
{
    /// <summary>
    /// The recipe in the size asked for. Never throws for what people write: what cannot be done is refused with a finding of grade error, and
    /// <see cref="Resized.Recipe"/> is null then.
    /// </summary>
    public static Resized Resize(Recipe recipe, Larder larder, ResizeRequest request) =>
        ResizedMeasures.Settle(Resizer.Resize(recipe, larder, request), larder);
}

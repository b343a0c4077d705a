using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.App.Desk.Asking;

/// <summary>Which dough a recipe is about, when it has several.</summary>
internal static class Doughs
{
    /// <summary>The last dough that is mixed, as everywhere: how warm it is after mixing; null when there is none or that cannot be told.</summary>
    public static Temperature? DoughMixed(this Rehearsal rehearsal) =>
        rehearsal.Components.LastOrDefault(component => component.Kind == ComponentKind.Dough)?.Mixed?.Likely;
}

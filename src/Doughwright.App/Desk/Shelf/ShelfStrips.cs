using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The small strips of the rows, all on one clock and one scale.</summary>
internal static class ShelfStrips
{
    /// <summary>Grams times volume where the strip is thickest.</summary>
    public static double ThickestOf(Rehearsal rehearsal) => rehearsal.Formula.Dough.Grams;

    /// <summary>Null when the course cannot be drawn.</summary>
    public static string? Draw(Rehearsal rehearsal, ShelfScale scale, string id, Voice voice) => null;

    public static string Axis(ShelfScale scale, DateTime ready, Voice voice) => "";
}

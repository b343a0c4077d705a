using Doughwright.Engine.Quantities;

namespace Doughwright.Publishing.Pages.Measures;

/// <summary>A weight in the measures of a kitchen drawer: cups, spoons, pieces.</summary>
internal static class Spoons
{
    /// <summary>How far a printed measure may lie from the weight. A level spoon is no nearer than that. Common practice, no source.</summary>
    private const double LargestError = 0.06;

    /// <summary>Parts of a measure that cups and spoons have marks or sizes for, and how they are printed.</summary>
    private static readonly (double Part, string Mark)[] Parts = [(0, ""), (1.0 / 4, "¼"), (1.0 / 3, "⅓"), (1.0 / 2, "½"), (2.0 / 3, "⅔"), (3.0 / 4, "¾"), (1, "")];

    /// <summary>
    /// The nearest number of the largest measure that comes near enough, as a number and the measure; null where none does.
    /// </summary>
    /// <param name="mass">Above zero.</param>
    /// <param name="measures">Measures of the ingredient, each with the weight of one; <c>Whole</c> for what is counted only in wholes and halves.</param>
    public static (string Number, string Unit, bool One)? Nearest(Mass mass, IEnumerable<(string Unit, Mass One, bool Whole)> measures)
    {
        foreach (var (unit, one, whole) in measures.Where(measure => measure.One > Mass.Zero).OrderByDescending(measure => measure.One))
        {
            var count = mass / one;
            // Half a spoon is the least that is dipped; of a cup a quarter.
            if (count < (whole ? 0.5 : 0.24) || count > 16)
            {
                continue;
            }

            var floor = Math.Floor(count);
            var near = Parts.Where(part => !whole || part.Part is 0 or 0.5 or 1).MinBy(part => Math.Abs(floor + part.Part - count));
            var shown = floor + near.Part;
            if (shown > 0 && Math.Abs(shown - count) <= LargestError * count)
            {
                var wholes = near.Part == 1 ? floor + 1 : floor;
                return ((wholes > 0 ? Show.Number(wholes, 0) : "") + near.Mark, unit, shown <= 1);
            }
        }

        return null;
    }
}

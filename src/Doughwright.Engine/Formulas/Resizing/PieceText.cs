using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>The weight of one piece, as it can be scaled off.</summary>
internal static class PieceText
{
    /// <summary>To the step of the scale; as it was where it did not change, and as it is where it is lighter than ten steps.</summary>
    public static Mass Rounded(Mass piece, Mass scale, Mass before)
    {
        if (piece == before || piece < scale * 10)
        {
            return piece;
        }

        var steps = Math.Round(piece / scale, MidpointRounding.AwayFromZero);
        return Mass.FromGrams(NumberText.ToDouble((decimal)steps * (decimal)scale.Grams));
    }
}

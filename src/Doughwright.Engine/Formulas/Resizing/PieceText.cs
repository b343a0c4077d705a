using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>The weight of one piece, as it can be scaled off.</summary>
internal static class PieceText
{
    // Times the number of pieces, a hundredth is still less than what sticks to the bowl.
    private const double Worst = 0.01;

    private static readonly Mass Fine = Mass.FromGrams(1);

    /// <summary>To the step of the scale, or to a gram where that step is too much for a piece; as it was where it did not change.</summary>
    public static Mass Rounded(Mass piece, Mass scale, Mass before) =>
        piece == before ? piece : To(scale, piece) ?? To(Fine, piece) ?? piece;

    private static Mass? To(Mass step, Mass piece)
    {
        var steps = Math.Round(piece / step, MidpointRounding.AwayFromZero);
        var rounded = Mass.FromGrams(NumberText.ToDouble((decimal)steps * (decimal)step.Grams));
        return piece >= step * 10 && Math.Abs((rounded / piece) - 1) <= Worst ? rounded : null;
    }
}

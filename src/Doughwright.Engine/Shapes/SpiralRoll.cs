using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Shapes;

/// <summary>A sheet of dough with a filling, rolled up and cut.</summary>
/// <param name="doughCubicMetres">All of the dough.</param>
/// <param name="fillingCubicMetres">All of the filling; nought for none.</param>
/// <param name="along">Side of the sheet that becomes the length of the roll.</param>
/// <param name="up">Side that is rolled up.</param>
/// <param name="pieces">Cut into so many, at least 1.</param>
internal sealed class SpiralRoll(double doughCubicMetres, double fillingCubicMetres, Length along, Length up, int pieces)
{
    /// <summary>Depth of the dough before it is rolled up.</summary>
    public Length Sheet { get; } = Length.FromMetres(doughCubicMetres / (along.Metres * up.Metres));

    /// <summary>Depth of the filling on it.</summary>
    public Length Filling { get; } = Length.FromMetres(fillingCubicMetres / (along.Metres * up.Metres));

    /// <summary>Through the roll: all that is rolled up, V = π D²/4 of the roll's length.</summary>
    public Length Across { get; } = Length.FromMetres(Math.Sqrt(4 * (doughCubicMetres + fillingCubicMetres) / (Math.PI * along.Metres)));

    /// <summary>Times that the layer goes round: half the roll over one layer.</summary>
    public double Turns => Across.Metres / (2 * (Sheet + Filling).Metres);

    public Length PieceHigh { get; } = along / Positive(pieces);

    public double PieceCubicMetres { get; } = (doughCubicMetres + fillingCubicMetres) / pieces;

    private static int Positive(int pieces)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(pieces, 1);
        return pieces;
    }
}

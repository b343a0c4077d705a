using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Shapes;

/// <summary>One piece as it lies: its outer measures, what of it is open and what rests, and how heat goes through it.</summary>
/// <param name="Long">Outer measures; of a ring with its hole.</param>
/// <param name="OpenSquareMetres">What the air or the cloth touches.</param>
/// <param name="RestingSquareMetres">What lies on a tray or against a tin, and gives heat to it.</param>
/// <param name="Ways">Through which heat goes, all at right angles.</param>
internal sealed record PieceForm(
    PieceShape Shape,
    double CubicMetres,
    Length Long,
    Length Wide,
    Length High,
    double OpenSquareMetres,
    double RestingSquareMetres,
    IReadOnlyList<HeatWay> Ways)
{
    /// <summary>All of it that heat passes.</summary>
    public double SquareMetres => OpenSquareMetres + RestingSquareMetres;

    public HeatForm Heat => HeatForm.Of(Ways, SquareMetres, CubicMetres);

    /// <summary>
    /// The same among neighbours that touch it all round: its sides are shut, and heat goes up and down only. It fills the floor that it has.
    /// </summary>
    public PieceForm Surrounded()
    {
        var floor = Long.Metres * Wide.Metres;
        var high = Length.FromMetres(CubicMetres / floor);
        return this with
        {
            High = high,
            OpenSquareMetres = floor,
            RestingSquareMetres = floor,
            Ways = [new(1, high / 2)],
        };
    }
}

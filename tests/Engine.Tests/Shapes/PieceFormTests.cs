using CsCheck;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Shapes;

namespace Doughwright.Engine.Tests.Shapes;

public class PieceFormTests
{
    private static readonly VesselSize Tin = new(Length.FromMetres(0.25), Length.FromMetres(0.11), Length.FromMetres(0.08), null);

    /// <summary>From a pea to a wash-tub.</summary>
    private static readonly Gen<(PieceShape Shape, double Volume, double Growth)> Any =
        Gen.Select(Gen.Enum<PieceShape>(), Gen.Double[-6, -0.3], Gen.Double[1, 6]).Select((shape, log, growth) => (shape, Math.Pow(10, log), growth));

    /// <summary>No shape has less outside than a ball of its volume.</summary>
    [Fact]
    public void EveryShape_HasAtLeastTheOutsideOfABall() => Any.Sample((shape, volume, growth) =>
    {
        var form = PieceForms.Of(shape, volume, growth);
        var ball = PieceForms.Of(PieceShape.Ball, volume * growth);
        Assert.Equal(volume * growth, form.CubicMetres, 1e-12 + (1e-9 * volume));
        // The edges of a sheet are neglected, so a thick patch of dough is none.
        Assert.True(form.SquareMetres >= ball.SquareMetres * (1 - 1e-9) || (shape == PieceShape.Sheet && form.High > form.Long / 4), $"{shape}");
        var heat = form.Heat;
        Assert.InRange(heat.Dimensions, 1, 6);
        // Volume over area is that of the true shape.
        Assert.Equal(form.CubicMetres / form.SquareMetres, heat.Size.Metres / heat.Dimensions, 1e-6 * form.CubicMetres / form.SquareMetres);
    });

    /// <summary>A loaf in its tin and a sheet on its tray rise upwards only; a long stick grows thicker and no longer.</summary>
    [Fact]
    public void Rising_KeepsTheFloorOrTheLength()
    {
        var (raw, risen) = (PieceForms.Of(PieceShape.TinLoaf, 0.0008, 1, Tin), PieceForms.Of(PieceShape.TinLoaf, 0.0008, 2.5, Tin));
        Assert.Equal((raw.Long, raw.Wide), (risen.Long, risen.Wide));
        Assert.Equal(2.5, risen.High / raw.High, 1e-12);
        var (before, after) = (PieceForms.Of(PieceShape.Baguette, 0.00032), PieceForms.Of(PieceShape.Baguette, 0.00032, 2));
        Assert.Equal(before.Long.Metres, after.Long.Metres, 1e-12);
        Assert.Equal(Math.Sqrt(2), after.Wide / before.Wide, 1e-9);
        Assert.Equal(0.55, before.Long.Metres, 0.02);
    }

    /// <summary>A ring of the volume and the turn of its tube has the area 4π² times both radii, as geometry has it.</summary>
    [Fact]
    public void Ring_IsATorus()
    {
        var ring = PieceForms.Of(PieceShape.Ring, 0.0006);
        var tube = ring.High.Metres / 2;
        var turn = (ring.Long.Metres / 2) - tube;
        Assert.Equal(4 * Math.PI * Math.PI * tube * turn, ring.SquareMetres, 1e-9);
        Assert.Equal(2 * Math.PI * Math.PI * tube * tube * turn, ring.CubicMetres, 1e-9);
    }

    /// <summary>
    /// A sheet of 45 by 30 cm, 5 mm of dough and 1 mm of filling, rolled up along its 30 cm: 6 mm times 300 mm is a disc of 47.9 mm, four times round.
    /// </summary>
    [Fact]
    public void Spiral_TurnsAsOftenAsItsLayersAllow()
    {
        var roll = new SpiralRoll(0.45 * 0.30 * 0.005, 0.45 * 0.30 * 0.001, Length.FromMetres(0.45), Length.FromMetres(0.30), 12);
        Assert.Equal(5, roll.Sheet.Metres * 1000, 1e-9);
        Assert.Equal(1, roll.Filling.Metres * 1000, 1e-9);
        Assert.Equal(47.87, roll.Across.Metres * 1000, 0.01);
        Assert.Equal(3.99, roll.Turns, 0.01);
        Assert.Equal(37.5, roll.PieceHigh.Metres * 1000, 1e-9);
        var (raw, proofed) = (PieceForms.Slice(roll), PieceForms.Slice(roll, 2));
        Assert.Equal(37.5, raw.High.Metres * 1000, 0.001);
        Assert.Equal(raw.Wide.Metres * Math.Pow(2, 1.0 / 3), proofed.Wide.Metres, 1e-6);
        Assert.Throws<ArgumentOutOfRangeException>(() => new SpiralRoll(1, 0, Length.FromMetres(1), Length.FromMetres(1), 0));
    }

    /// <summary>Neighbours all round leave a layer: the same volume, no sides.</summary>
    [Fact]
    public void Surrounded_LosesItsSides()
    {
        var ball = PieceForms.Of(PieceShape.Ball, 0.0001);
        var among = ball.Surrounded();
        Assert.Equal(1, among.Heat.Dimensions);
        Assert.True(among.SquareMetres < ball.SquareMetres);
        Assert.Equal(ball.CubicMetres, among.High.Metres * among.OpenSquareMetres, 1e-12);
    }

    /// <summary>By hand: 40 by 30 cm takes rounds of 9 cm 4 by 3 side by side; with 2 cm of air (11 cm) 3 by 2.</summary>
    [Fact]
    public void Tray_TakesWhatGoesIntoItsRows()
    {
        var tray = new VesselSize(Length.FromMetres(0.40), Length.FromMetres(0.30), null, null);
        var piece = PieceForms.Of(PieceShape.Ball, Math.PI / 6 * 0.09 * 0.09 * 0.09);
        Assert.Equal(new TrayLoad(6, 12), TrayLoad.Of(piece, tray));
        Assert.Equal([Lying.Apart, Lying.Touching, Lying.TooMany], new[] { 6, 7, 13 }.Select(TrayLoad.Of(piece, tray)!.Value.Of));
        Assert.Null(TrayLoad.Of(piece, new VesselSize(null, null, null, Volume.FromLitres(2))));
    }

    /// <summary>
    /// 7.6 cubic inches an ounce, wholesale white pan bread (trade page), are 4.39 cm³/g; 450 g in 84 cubic inches, home wholegrain loaf (baking
    /// page), 3.06: both fit.
    /// </summary>
    [Theory]
    [InlineData(7.6 * 16.387 / 28.35, 4.39, false, false)]
    [InlineData(84 * 16.387 / 450, 3.06, false, false)]
    [InlineData(2.2, 2.2, true, false)]
    [InlineData(6, 6, false, true)]
    public void Tin_FitsAsTheTradeFillsIt(double litres, double expected, bool small, bool large)
    {
        var fill = TinFill.Of(Volume.FromLitres(litres), Mass.FromGrams(1000));
        Assert.Equal(expected, fill.CubicCentimetresPerGram, 0.01);
        Assert.Equal((small, large), (fill.RunsOver, fill.IsLost));
    }

    [Theory]
    [InlineData("ring", "Ring")]
    [InlineData("long baguettes", "Baguette")]
    [InlineData("sheet", "Sheet")]
    [InlineData("loaf", null)]
    [InlineData("rolls", null)]
    [InlineData("", null)]
    public void OnlyAWordThatSaysTheShape_IsTaken(string what, string? shape) => Assert.Equal(shape, ShapeWords.Of(what)?.ToString());
}

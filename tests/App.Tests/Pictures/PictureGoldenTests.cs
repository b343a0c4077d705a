using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Warming;
using Doughwright.Publishing.Pictures.Balance;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Heat;
using Doughwright.Publishing.Pictures.Keys;
using Doughwright.Publishing.Pictures.Rise;
using Doughwright.Publishing.Pictures.Slips;
using Doughwright.Publishing.Pictures.Warming;

namespace Doughwright.App.Tests.Pictures;

/// <summary>Every picture as a whole, drawn from things made by hand.</summary>
public class PictureGoldenTests
{
    [Theory]
    [InlineData("home", 21, 26, 26.9)]
    [InlineData("mountain", 17, 26, 30.4)]
    [InlineData("summer", 30, 26, 14)]
    [InlineData("scald-hot", 21, 33, 68)]
    public void Heat(string name, double air, double mixed, double free) =>
        Checked("heat-" + name, HeatPicture.Draw(PictureSamples.Heat(air, mixed, free), Samples.Rehearsal, PictureSamples.Metric, "h"));

    [Theory]
    [InlineData("place-oven", PlaceKind.Oven, false)]
    [InlineData("place-bath", PlaceKind.WaterBath, true)]
    public void Place(string name, PlaceKind kind, bool us)
    {
        var (advice, place) = PlaceSample.Of(kind);
        Checked(name, PlacePicture.Draw(place, advice, us ? PictureSamples.Us : PictureSamples.Metric, "p"));
    }

    [Fact]
    public void HeatInUsMeasures() =>
        Checked("heat-us", HeatPicture.Draw(PictureSamples.Heat(17, 26, 30.4), Samples.Rehearsal, PictureSamples.Us, "h"));

    [Fact]
    public void RiseOfABulk() => Checked("rise-bulk", RisePicture.Draw(
        PictureSamples.Rise(105, 2, 26, 21), PictureSamples.Step(StepKind.Bulk, 105, "doubled", folds: 45), [PictureSamples.Other("Kestrel cottage", 117)], PictureSamples.Metric, "r"));

    [Fact]
    public void RiseOfAProof() => Checked("rise-proof", RisePicture.Draw(
        PictureSamples.Rise(70, 1.5, 23, 21), PictureSamples.Step(StepKind.Proof, 70, "springs back slowly, trembles when the tray is shaken"), [PictureSamples.Other("Kestrel cottage", 84, 1.5)], PictureSamples.Metric, "r"));

    [Fact]
    public void RiseOverNight() => Checked("rise-night", RisePicture.Draw(
        PictureSamples.Rise(14 * 60, 3, 21, 19, open: true),
        PictureSamples.Step(StepKind.Bulk, 14 * 60, "domed, full of bubbles, just beginning to fall in the middle", open: true, 60, 120, 180),
        [PictureSamples.Other("A very warm kitchen", 400, 3), PictureSamples.Other("Kestrel cottage", 1000, 3, never: true)], PictureSamples.Us, "r"));

    [Fact]
    public void RiseByTheClock() => Checked("rise-clock", RisePicture.Draw(
        PictureSamples.Rise(15, null, 26, 21), PictureSamples.Step(StepKind.Rest, 15, null), [], PictureSamples.Metric, "r"));

    [Fact]
    public void RiseThatNeverEnds() => Checked("rise-never", RisePicture.Draw(
        PictureSamples.Rise(200, 1.5, 8, 5) with { Target = 2 }, PictureSamples.Step(StepKind.Bulk, null, null), [PictureSamples.Other("At home", 105)], PictureSamples.Metric, "r"));

    [Fact]
    public void Balance() => Checked("balance", BalancePicture.Draw(PictureSamples.Makeup, Samples.Rehearsal.Formula, PictureSamples.Metric, "b"));

    [Fact]
    public void BalanceWithUnknowns() => Checked("balance-unknown", BalancePicture.Draw(
        PictureSamples.Of(("strong-white-flour", 500, 500, 0, 0, 0, 0), ("water", 350, 0, 350, 0, 0, 0), ("walnut paste", 90, 0, null, 10, null, null)), Samples.Rehearsal.Formula, PictureSamples.Us, "b"));

    [Fact]
    public void Slips() => Checked("slips", SlipsPicture.Draw(Samples.Home, Samples.Rehearsal, "Ropewalk", "Kestrel cottage", PictureSamples.Metric, "s", Duration.FromMinutes(480)));

    [Fact]
    public void Keys() => Checked("keys", string.Join('\n', [CombKey.Draw(), .. Enum.GetValues<MarkShape>().Select((shape, index) => FindingMark.Draw(shape, index + 1))]));

    private static void Checked(string name, string picture) => Golden.Check("picture-" + name, picture.Replace("><", ">\n<", StringComparison.Ordinal) + "\n");
}

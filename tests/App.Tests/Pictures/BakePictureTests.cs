using System.Globalization;
using System.Xml.Linq;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Sections;
using Doughwright.Publishing.Pictures.Bake;
using Doughwright.Publishing.Pictures.Files;

namespace Doughwright.App.Tests.Pictures;

/// <summary>The picture of a bake: whole, in its frame, with its figures beside it.</summary>
public class BakePictureTests
{
    private static readonly RehearsedStep Step = DemoRuns.All[0].Run.Steps.First(step => step.Kind == StepKind.Bake);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Picture_IsSound_WithinItsFrame(bool lies)
    {
        var svg = XElement.Parse(BakePicture.Draw(Sample(lies), Step, PictureSamples.Metric, "p"));
        var box = svg.Attribute("viewBox")!.Value.Split(' ').Select(Number).ToArray();
        Assert.All(svg.Descendants("rect"), rect =>
        {
            Assert.InRange(Number(rect.Attribute("x")!.Value), 0, box[2]);
            Assert.InRange(Number(rect.Attribute("y")!.Value) + Number(rect.Attribute("height")!.Value), 0, box[3]);
        });
        // Four slices with an edge each, and no more colours than there are cells.
        Assert.Equal(4, svg.Descendants("rect").Count(rect => rect.Attribute("class")!.Value == "mapedge"));
        Assert.DoesNotContain("NaN", svg.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain('{', svg.ToString());
        Assert.Equal(lies ? 3 : 4, svg.Elements("text").Count(text => Number(text.Attribute("x")!.Value) > BakeFrame.Right + 10 && Number(text.Attribute("y")!.Value) < BakeFrame.Foot + 10));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void File_StandsAlone_AndIsPaintedWhole(bool lies)
    {
        var file = PictureFile.Of(BakePicture.Draw(Sample(lies), Step, PictureSamples.Metric, "p"), Ground.Light, 700);
        Assert.DoesNotContain("var(", file.ToSvg(), StringComparison.Ordinal);
        Assert.DoesNotContain("color-mix", file.ToSvg(), StringComparison.Ordinal);
        Assert.Empty(file.ToPng().Missing);
    }

    [Fact]
    public void Table_SaysWhatThePictureShows()
    {
        var table = BakeTable.Of(Sample(lies: false), "Bake", PictureSamples.Metric);
        Assert.Equal(6, table.Heads.Count);
        Assert.All(table.Rows, row => Assert.Equal(table.Heads.Count - 1, row.Cells.Count));
        Assert.Equal("94.0", table.Rows[^1].Cells[0]);
    }

    /// <summary>Made by hand: a core that follows, a crust that leads, two rings in two layers.</summary>
    private static BakedSection Sample(bool lies)
    {
        static Temperature At(double celsius) => Temperature.FromCelsius(celsius);
        BakedMoment[] course = [.. Enumerable.Range(0, 21).Select(minute => new BakedMoment(
            Duration.FromMinutes(minute), At(24 + (3.5 * minute)), At(24 + (5 * minute)), At(24 + (4.8 * minute)), At(24 + (4.5 * minute)), Percent.FromValue(minute / 2.0)) { Oven = At(180) })];
        SectionSlice[] slices = [.. Enumerable.Range(1, 4).Select(slice => new SectionSlice(
            Duration.FromMinutes(5 * slice), [0, 20, 40], [0, 15, 30], [At(20 * slice), At(30 * slice), At(20 * slice), At(30 * slice)]))];
        return new(Step.Id, Duration.FromMinutes(20), lies, Length.FromMillimetres(40), Length.FromMillimetres(30), 1.1, course, slices);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}

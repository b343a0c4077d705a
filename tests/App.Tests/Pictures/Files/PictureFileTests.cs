using System.Xml.Linq;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Files;
using Doughwright.Publishing.Pictures.Files.Styles;
using Doughwright.Publishing.Wording;
using SkiaSharp;

namespace Doughwright.App.Tests.Pictures.Files;

/// <summary>Pictures in files of their own.</summary>
public class PictureFileTests
{
    private static readonly Voice Voice = new(Words.Shipped, MeasureSystem.Metric);

    /// <summary>Pictures of a rehearsal; those of a warm place and of a bake over a section are drawn from other answers and have their own tests.</summary>
    private static IEnumerable<PictureKind> Kinds => Enum.GetValues<PictureKind>().Where(kind => kind is not (PictureKind.Place or PictureKind.Bake));

    public static TheoryData<string, string> Looks
    {
        get
        {
            var looks = new TheoryData<string, string>();
            foreach (var kind in Kinds)
            {
                foreach (var ground in Enum.GetValues<Ground>())
                {
                    looks.Add(kind.ToString(), ground.ToString());
                }
            }

            return looks;
        }
    }

    private static string Drawn(PictureKind kind, string recipe = "pilot-ring", string kitchen = "home") => new PictureChoice(DemoRuns.Of(recipe, kitchen), null, Voice).Draw(kind)!;

    /// <summary>Nothing is left that only a page could answer: no token, no colour still to be mixed, no rule for another element.</summary>
    [Theory]
    [MemberData(nameof(Looks))]
    public void File_StandsAlone(string kindName, string groundName)
    {
        var (kind, ground) = (Enum.Parse<PictureKind>(kindName), Enum.Parse<Ground>(groundName));
        var svg = PictureFile.Of(Drawn(kind), ground, 1920).ToSvg();
        var root = XElement.Parse(svg);
        Assert.Equal("1920", root.Attribute("width")!.Value);
        Assert.DoesNotContain("var(", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("color-mix", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", svg, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("href", svg, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("data:font/woff2;base64,", svg, StringComparison.Ordinal);
        Assert.Equal(ground != Ground.None, root.Elements().Any(element => element.Name.LocalName == "rect" && element.Attribute("class") is null));
    }

    /// <summary>Every picture of every recipe in every kitchen is painted with nothing left out.</summary>
    [Fact]
    public void EveryPicture_IsPaintedWhole()
    {
        foreach (var (name, run) in DemoRuns.All.Where(run => run.Name.EndsWith("home", StringComparison.Ordinal) || run.Name.EndsWith("summer", StringComparison.Ordinal)))
        {
            var choice = new PictureChoice(run, null, Voice);
            foreach (var kind in Kinds)
            {
                foreach (var step in PictureChoice.IsOfStep(kind) ? choice.Steps(kind) : [""])
                {
                    var file = PictureFile.Of(choice.Draw(kind, step.Length == 0 ? null : step)!, Ground.Light, 400);
                    var painted = file.ToPng();
                    using var picture = SKBitmap.Decode(painted.Png);
                    Assert.True(painted.Missing.Count == 0, $"{name}, {kind}: {string.Join(' ', painted.Missing)}");
                    Assert.Equal((file.WidthPixels, file.HeightPixels), (picture.Width, picture.Height));
                }
            }
        }
    }

    [Theory]
    [InlineData("Light", "#fffbfbf8")]
    [InlineData("Dark", "#ff121516")]
    [InlineData("None", "#00000000")]
    public void Ground_IsWhatWasAskedFor(string ground, string expected)
    {
        using var picture = SKBitmap.Decode(PictureFile.Of(Drawn(PictureKind.Strip), Enum.Parse<Ground>(ground), 640).ToPng().Png);
        Assert.Equal(expected, picture.GetPixel(2, 2).ToString());
    }

    [Fact]
    public void SamePicture_GivesTheSameBytes() =>
        Assert.Equal(PictureFile.Of(Drawn(PictureKind.Strip), Ground.Light, 800).ToPng().Png, PictureFile.Of(Drawn(PictureKind.Strip), Ground.Light, 800).ToPng().Png);

    [Fact]
    public void LetterThatNoFaceHas_IsTold()
    {
        var picture = Drawn(PictureKind.Balance).Replace("Sugar", "Sug\U000E0FFFar", StringComparison.Ordinal);
        Assert.Equal(["\U000E0FFF"], PictureFile.Of(picture, Ground.Light, 400).ToPng().Missing);
    }

    [Theory]
    [InlineData(PictureFile.Narrowest - 1)]
    [InlineData(PictureFile.Widest + 1)]
    public void WidthOutsideItsLimits_IsRefused(int width) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PictureFile.Of(Drawn(PictureKind.Strip), Ground.Light, width));

    /// <summary>CSS Color 4, and the channels of oklab(0.5 0 0) and of oklch in its examples: half way from black to white is #636363, not #808080.</summary>
    [Theory]
    [InlineData("#000000", "#ffffff", 0.5, "#636363")]
    [InlineData("#ff0000", "#0000ff", 0.5, "#8c53a2")]
    [InlineData("#fbfbf8", "#16191a", 0, "#fbfbf8")]
    [InlineData("#fbfbf8", "#16191a", 1, "#16191a")]
    public void Colours_AreMixedAsTheSheetSays(string one, string other, double share, string expected) => Assert.Equal(expected, Oklab.Mix(one, other, share));
}

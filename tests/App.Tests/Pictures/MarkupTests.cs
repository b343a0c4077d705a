using System.Text.RegularExpressions;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Balance;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Heat;
using Doughwright.Publishing.Pictures.Keys;
using Doughwright.Publishing.Pictures.Rise;
using Doughwright.Publishing.Pictures.Slips;

namespace Doughwright.App.Tests.Pictures;

/// <summary>Pictures are plain markup: read by every reader of XML, looked after by the sheet of styles, told to those who hear the page.</summary>
public partial class MarkupTests
{
    private static readonly string Sheets = string.Concat(new[] { "tokens.css", "desk.css" }.Select(file => File.ReadAllText(House.PathTo("src", "Doughwright.App", "wwwroot", file))));

    private static readonly HashSet<string> Known = [.. ClassName().Matches(Sheets).Select(match => match.Groups["name"].Value)];

    private static readonly string[] Names = ["<script>alert(1)</script>", "\"quoted' & <b>bold</b>", new('x', 200), "a ]]> b", "e\u0301\u0302 \u9eba\u5305", ""];

    [Fact]
    public void Pictures_HaveNoStyleOfTheirOwn_NoScript_AndOnlyKnownClasses()
    {
        var unknown = new HashSet<string>();
        foreach (var (name, picture) in AllPictures.Of(PictureSamples.Metric).Append(("comb", CombKey.Draw())).Concat(Enum.GetValues<MarkShape>().Select(shape => (shape.ToString(), FindingMark.Draw(shape, 3)))))
        {
            var drawn = new Drawn(picture);
            foreach (var element in drawn.Root.DescendantsAndSelf())
            {
                Assert.DoesNotContain(element.Attributes(), attribute => attribute.Name.LocalName is "style" || attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
                Assert.DoesNotContain(element.Name.LocalName, new[] { "script", "style", "foreignObject", "image", "a" });
                unknown.UnionWith(Drawn.Classes(element).Where(@class => !Known.Contains(@class)));
            }

            Assert.DoesNotContain("NaN", picture, StringComparison.Ordinal);
            Assert.DoesNotContain('∞', picture);
            Assert.NotEmpty(name);
        }

        Assert.Equal([], unknown.Order());
    }

    [Fact]
    public void EveryPicture_IsTold_AndItsReferencesAreItsOwn()
    {
        foreach (var (name, picture) in AllPictures.Of(PictureSamples.Metric))
        {
            var drawn = new Drawn(picture);
            var ids = drawn.Root.DescendantsAndSelf().Select(element => element.Attribute("id")?.Value).OfType<string>().ToList();
            Assert.Equal(ids.Count, ids.Distinct().Count());
            Assert.All(drawn.Root.Attribute("aria-labelledby")!.Value.Split(' '), id => Assert.Contains(id, ids));
            Assert.All(Reference().Matches(picture).Select(match => match.Groups["id"].Value), id => Assert.Contains(id, ids));
            Assert.Equal("img", drawn.Root.Attribute("role")!.Value);
            Assert.True(drawn.Title.Length > 10 && drawn.Description.Length > 10, name);
            Assert.DoesNotContain('{', drawn.Title + drawn.Description + string.Concat(drawn.Texts));
        }
    }

    [Fact]
    public void HostileNames_AreTextAndNothingElse()
    {
        foreach (var name in Names)
        {
            var formula = Renamed(Samples.Rehearsal.Formula, name);
            var run = Samples.Rehearsal with { Formula = formula };
            string[] pictures =
            [
                HeatPicture.Draw(PictureSamples.Heat(17, 26, 30.4), run, PictureSamples.Metric, "h"),
                HeatPicture.Draw(PictureSamples.Heat(30, 26, 14), run, PictureSamples.Metric, "h"),
                BalancePicture.Draw(PictureSamples.Makeup, formula, PictureSamples.Metric, "b"),
                RisePicture.Draw(PictureSamples.Rise(105, 2, 26, 21), PictureSamples.Step(StepKind.Bulk, 105, name, folds: 45), [.. Enumerable.Repeat(PictureSamples.Other(name, 120), 5)], PictureSamples.Metric, "r"),
                RisePicture.Draw(PictureSamples.Rise(70, 1.5, 26, 21), PictureSamples.Step(StepKind.Proof, 70, name), [PictureSamples.Other(name, 60, 1.5)], PictureSamples.Metric, "r"),
                SlipsPicture.Draw(Samples.Home, run, name, name, PictureSamples.Metric, "s", Duration.FromMinutes(500)),
            ];
            foreach (var picture in pictures)
            {
                var drawn = new Drawn(picture);
                Assert.DoesNotContain(drawn.Root.Descendants(), element => element.Name.LocalName is "script" or "b");
                var lines = drawn.Lines(phone: true);
                Assert.All(lines, line => Assert.InRange(line.Box.Right, 0, drawn.Width + 0.5));
                Assert.All(lines.Index(), line => Assert.DoesNotContain(lines.Skip(line.Index + 1), other => other.Box.Overlaps(line.Item.Box)));
            }
        }
    }

    [Fact]
    public void SameThing_IsDrawnTheSame() => Assert.Equal(AllPictures.Of(PictureSamples.Metric).Take(40), AllPictures.Draw(PictureSamples.Metric, 2).Take(40));

    private static Formula Renamed(Formula formula, string name) => formula with
    {
        Components = [.. formula.Components.Select(component => component with { Lines = [.. component.Lines.Select(line => line with { Name = name })] })],
    };

    [GeneratedRegex(@"\.(?<name>[a-z][\w-]*)")]
    private static partial Regex ClassName();

    [GeneratedRegex(@"url\(#(?<id>[^)]+)\)")]
    private static partial Regex Reference();
}

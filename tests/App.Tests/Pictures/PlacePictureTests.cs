using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Warming;
using Doughwright.Publishing.Pictures.Warming;

namespace Doughwright.App.Tests.Pictures;

/// <summary>The picture of a place made warm: whole, in its frame, and in nobody's way.</summary>
public partial class PlacePictureTests
{
    private static readonly (string Step, double Target)[] Asked = [("bulk", 26), ("bulk", 20), ("proof", 30)];

    private static IEnumerable<(string Name, PlaceAdvice Advice, PlaceAnswer Place)> All() =>
        from run in DemoRuns.All
        from asked in Asked
        where run.Run.FindStep(asked.Step) is not null
        let advice = Places.Advise(run.Run, asked.Step, Temperature.FromCelsius(asked.Target))
        from place in advice.Places
        select ($"{place.Kind} for {asked.Step} at {asked.Target} in {run.Name}", advice, place);

    [Fact]
    public void EveryPlace_IsDrawnAsSoundMarkup_WithinItsFrame_WithNamesApart()
    {
        var count = 0;
        foreach (var voice in new[] { PictureSamples.Metric, PictureSamples.Us })
        {
            foreach (var (name, advice, place) in All())
            {
                var svg = XElement.Parse(PlacePicture.Draw(place, advice, voice, "p"));
                var box = svg.Attribute("viewBox")!.Value.Split(' ').Select(Number).ToArray();
                Assert.All(Coordinates().Matches(string.Join(' ', svg.Descendants("path").Select(path => path.Attribute("d")!.Value))), match =>
                {
                    Assert.True(Number(match.Groups["x"].Value) >= 0 && Number(match.Groups["x"].Value) <= box[2], name);
                    Assert.True(Number(match.Groups["y"].Value) >= 0 && Number(match.Groups["y"].Value) <= box[3], name);
                });
                var names = svg.Elements("text").Where(text => Number(text.Attribute("x")!.Value) > PlaceFrame.Right + 10).Select(text => Number(text.Attribute("y")!.Value)).Order().ToList();
                Assert.All(names.Zip(names.Skip(1)), pair => Assert.True(pair.Second - pair.First >= 18, name));
                Assert.DoesNotContain("NaN", svg.ToString(), StringComparison.Ordinal);
                Assert.DoesNotContain('{', svg.ToString());
                count++;
            }
        }

        Assert.True(count > 40);
    }

    /// <summary>The likely dough of the picture is that of the answer: the line ends as warm as the answer says.</summary>
    [Fact]
    public void LinesEnd_WhereTheAnswerSays()
    {
        var (_, advice, place) = All().First(each => each.Place.Kind == PlaceKind.Oven);
        Assert.Equal(place.DoughEnd.Likely.Celsius, place.Course[^1].Dough!.Value.Likely.Celsius, 1e-9);
        var svg = XElement.Parse(PlacePicture.Draw(place, advice, PictureSamples.Metric, "p"));
        Assert.Contains(svg.Elements("text"), text => text.Value == PictureSamples.Metric.Say("place.picture-dough", ("figure", PictureSamples.Metric.Degrees(place.DoughEnd.Likely))));
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"[ML](?<x>-?[\d.]+) (?<y>-?[\d.]+)")]
    private static partial Regex Coordinates();
}

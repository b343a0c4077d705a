using YamlDotNet.RepresentationModel;

namespace Doughwright.Engine.Tests.Cases;

/// <summary>What a person writes as a case is taken as meant, or told with its place and never guessed.</summary>
public class CaseTextTests
{
    [Fact]
    public void SoundText_IsReadAsWritten()
    {
        var reading = CaseSamples.Read(CaseSamples.Ball);
        Assert.Empty(reading.Findings);
        var series = Assert.Single(reading.Case!.Series);
        Assert.Equal(("core temperature", "°C", "time", "min"), (series.Quantity, series.Unit, series.Along, series.AlongUnit));
        Assert.Equal([(30d, 24d, 24d, 1d), (60d, 20d, 21d, 1d)], series.Points.Take(2).Select(point => (point.At!.Value, point.Low, point.High, point.Tolerance)));
        Assert.Equal(120, series.Points[2].At);
        Assert.Equal(13.8889, series.Points[2].Value, 1e-4);
        Assert.Equal(2 / 1.8, series.Points[2].Tolerance, 1e-12);
        Assert.Equal(("mass", "500 g"), (reading.Case.Conditions[1].Key, reading.Case.Conditions[1].Words));
        Assert.True(reading.Case.IsEvidence);
    }

    [Fact]
    public void AllFaults_AreToldAtOnce_EachAtItsPlace()
    {
        var text = CaseSamples.Ball
            .Replace("case: ball", "case: A Ball", StringComparison.Ordinal)
            .Replace("mass: 500 g", "mass: 500 C", StringComparison.Ordinal)
            .Replace("start: 26 C", "start: NaN C", StringComparison.Ordinal)
            .Replace("conductivity: 0.45 W/(m K)", "conductivity: 450 W/mK", StringComparison.Ordinal)
            .Replace("coefficient: 8 W/(m² K)", "coefficient: 1e9 W/m2K", StringComparison.Ordinal)
            .Replace("- 30 min, 24 C", "- 30 min", StringComparison.Ordinal)
            .Replace("20 to 21 C", "21 to 20 C", StringComparison.Ordinal);
        Assert.Equal(
            [
                ("case-id-wrong", 2, 7),
                ("unit-of-another-kind", 11, 13),
                ("case-figure-outside", 14, 17),
                ("number-missing", 15, 10),
                ("number-not-plain", 17, 16),
                ("case-row-wrong", 23, 9),
                ("case-range-backwards", 24, 14),
            ],
            CaseSamples.Found(CaseSamples.Read(text)));
        Assert.Null(CaseSamples.Read(text).Case);
        Assert.False(CaseSamples.Read(text).Understood);
    }

    [Theory]
    [InlineData("kind: cooling", "kind: colling", "unknown-word", 4)]
    [InlineData("read: from memory", "read: somewhere", "unknown-word", 7)]
    [InlineData("read: from memory", "read: read", "case-one-of-missing", 5)]
    [InlineData("  shape: ball\n", "", "case-key-missing", 9)]
    [InlineData("  mass: 500 g\n", "", "case-one-of-missing", 9)]
    [InlineData("  mass: 500 g\n", "  mass: 500 g\n  diameter: 9 cm\n", "case-not-together", 11)]
    [InlineData("  density: 1150 kg/m3\n", "", "case-key-missing", 9)]
    [InlineData("  density: 1150 kg/m3", "  dough: 3 g", "case-not-together", 13)]
    [InlineData("mass: 500 g", "mass: 500", "unit-missing", 11)]
    [InlineData("mass: 500 g", "mass: 0 g", "case-figure-outside", 11)]
    [InlineData("mass: 500 g", "mass: -5 g", "negative-quantity", 11)]
    [InlineData("mass: 500 g", "mass: 7,5 g", "decimal-comma", 11)]
    [InlineData("density: 1150 kg/m3", "density: 1150 J/kgK", "unit-of-another-kind", 13)]
    [InlineData("density: 1150 kg/m3", "density: 1150 stone", "unit-unknown", 13)]
    [InlineData("density: 1150 kg/m3", "density: lots", "quantity-missing", 13)]
    [InlineData("air: 4 C", "air: 400 C", "case-air-outside-limits", 16)]
    [InlineData("air: 4 C", "wind: 4 C", "unknown-key", 16)]
    [InlineData("core temperature:", "core temprature:", "unknown-key", 19)]
    [InlineData("    tolerance: 1 K\n", "", "case-tolerance-missing", 19)]
    [InlineData("    because: made up\n", "", "case-reason-missing", 19)]
    [InlineData("tolerance: 1 K", "tolerance: 0 K", "case-tolerance-nought", 20)]
    [InlineData("tolerance: 1 K", "tolerance: 1 g", "unit-unknown", 20)]
    [InlineData("    points:", "    value: 3 C\n    points:", "case-rows-twice", 19)]
    [InlineData("2 h, 57 F, within 2 F", "2 h, 57 F, about 2 F", "case-row-wrong", 25)]
    [InlineData("doughwright: 1", "doughwright: 2", "form-newer", 1)]
    public void Fault_IsToldWhereItStands(string piece, string instead, string kind, int line) =>
        Assert.Contains((kind, line), CaseSamples.Found(CaseSamples.With(piece, instead)).Select(found => (found.Kind, found.Line)));

    [Theory]
    [InlineData("")]
    [InlineData("nonsense")]
    [InlineData("doughwright: 1\n")]
    [InlineData("doughwright: 1\ncase: x\nkind: rise\nconditions: 3\nmeasured:\n  - 1\n")]
    public void TextThatIsNoCase_IsToldAndNeverThrows(string text)
    {
        var reading = CaseSamples.Read(text);
        Assert.NotEmpty(reading.Findings);
        Assert.Null(reading.Case);
    }

    [Fact]
    public void HugeText_IsRefusedBeforeItIsRead() =>
        Assert.Equal("text-too-large", Assert.Single(CaseSamples.Read(new string('x', 2_000_000)).Findings).Kind);

    [Fact]
    public void MoreFiguresThanAnybodyNeeds_AreRefused()
    {
        var rows = string.Concat(Enumerable.Repeat("      - 30 min, 24 C\n", 1001));
        Assert.Contains(CaseSamples.With("      - 30 min, 24 C\n", rows).Findings, finding => finding.Kind == "case-rows-too-many");
    }

    [Fact]
    public void EveryPublishedText_IsYaml() => Assert.All(Published.Files, file =>
    {
        var yaml = new YamlStream();
        yaml.Load(new StringReader(File.ReadAllText(file)));
        Assert.Equal("1", ((YamlMappingNode)yaml.Documents[0].RootNode)["doughwright"].ToString());
    });
}

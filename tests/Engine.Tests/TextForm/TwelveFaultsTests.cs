using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>Twelve faults in one file: all told in one reading, each once, where it stands, and the rest of the recipe is there.</summary>
public class TwelveFaultsTests
{
    private static readonly string Text = Texts.Read("tests/data/texts/potato-rolls-twelve-faults.yaml");
    private static readonly Reading Reading = RecipeText.Read(Text);

    [Theory]
    [InlineData("unknown-key", "  fridgge: 5 C", "fridgge", true)]
    [InlineData("same-key-twice", "  trays: 3", "trays", true)]
    [InlineData("leading-zero", "    water: 010 g, boiling", "010 g", true)]
    [InlineData("circle", "    dough: 10 g", "dough", false)]
    [InlineData("negative-quantity", "    egg: -50 g", "-50 g", false)]
    [InlineData("missing-component", "    levain: all of it", "levain", false)]
    [InlineData("decimal-comma", "    salt: 7,5 g", "7,5 g", true)]
    [InlineData("unit-unknown", "    instant yeast: 4 gr", "gr", true)]
    [InlineData("anchor", "    butter: &fat 50 g, soft", "&fat", true)]
    [InlineData("anchor", "    oil: *fat", "*fat", true)]
    [InlineData("clock-time", "    measured: 12:30", "12:30", true)]
    [InlineData("tab", "\u2192cue: golden all over", "\u2192", true)]
    [InlineData("same-id-twice", "  bulk:", "bulk", true)]
    public void EachFault_IsToldOnceWhereItStands(string kind, string quoted, string at, bool notUnderstood)
    {
        var finding = Assert.Single(Reading.Findings, finding => finding.Kind == kind && finding.Quoted == quoted);
        Assert.Equal(quoted, Text.Split('\n')[finding.Position.Line - 1].Replace('\t', '\u2192'));
        Assert.Equal(quoted.IndexOf(at, StringComparison.Ordinal) + 1, finding.Position.Column);
        Assert.Equal(notUnderstood, finding.NotUnderstood);
    }

    [Fact]
    public void TwelveFaults_AreTwelve()
    {
        // An anchor and its alias are one slip on two lines.
        Assert.Equal(13, Reading.Findings.Count);
        Assert.Equal(12, Reading.Findings.DistinctBy(finding => finding.Kind).Count());
        Assert.False(Reading.Understood);
    }

    [Fact]
    public void Rest_IsNotLost()
    {
        var recipe = Reading.Recipe!;
        Assert.Equal(["scald", "potato", "dough", "wash"], recipe.Components.Select(component => component.Id));
        Assert.Equal(11, recipe.Steps.Count);
        Assert.Equal(
            ["strong-white-flour", "scald", "potato", "sugar", "butter"],
            recipe.FindComponent("dough")!.Lines.Select(line => line.Id));
        Assert.Equal("golden all over", recipe.FindStep("bake")!.Cue);
        Assert.Equal(["soft"], recipe.FindComponent("dough")!.Lines[4].Conditions);
    }

    [Fact]
    public void DecimalCommaAndLeadingZero_OfferTheRightSpelling()
    {
        Assert.Equal("7.5 g", Reading.Findings.Single(finding => finding.Kind == "decimal-comma").Arguments["offer"]);
        Assert.Equal("10 g", Reading.Findings.Single(finding => finding.Kind == "leading-zero").Arguments["offer"]);
        Assert.Equal("4 g", Reading.Findings.Single(finding => finding.Kind == "unit-unknown").Arguments["offer"]);
        Assert.Equal("fridge", Reading.Findings.Single(finding => finding.Kind == "unknown-key").Arguments["nearest"]);
    }
}

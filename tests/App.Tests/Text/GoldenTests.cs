using Doughwright.App.Text;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Text;

/// <summary>What is printed, as a whole. The rehearsals are made by hand, so that their pages change with the layout only.</summary>
public class GoldenTests
{
    private static readonly Voice Metric = new(Words.Shipped, MeasureSystem.Metric);
    private static readonly Voice Us = new(Words.Shipped, MeasureSystem.Us);

    [Fact]
    public void NoArguments() => Checked("no-arguments", Run.Of().Output);

    [Fact]
    public void RehearseHelp() => Checked("rehearse-help", Run.Of("rehearse", "--help").Output);

    [Fact]
    public void FormulaOfPotatoRolls() => Checked("formula-potato-rolls", Run.Of("formula", House.PotatoRolls).Output);

    [Fact]
    public void FormulaInUsMeasures() => Checked("formula-potato-rolls-us", Run.Of("formula", House.PotatoRolls, "--measures", "us").Output);

    [Fact]
    public void TwelveFaults() => Checked("findings-twelve-faults", Run.Of("findings", House.Text("potato-rolls-twelve-faults.yaml")).Output);

    [Fact]
    public void RehearsalAway() =>
        Checked("rehearsal-away", RehearsalText.Write(Samples.Rehearsal, Samples.Request, new(Samples.Findings, []), ["bulk"], Metric));

    [Fact]
    public void RehearsalAtHome() => Checked("rehearsal-home", RehearsalText.Write(Samples.Home, new(), new([], []), [], Metric));

    [Fact]
    public void RehearsalInUsMeasures() => Checked("rehearsal-away-us", RehearsalText.Write(Samples.Rehearsal, Samples.Request, new([], []), [], Us));

    /// <summary>The pages of the first recipe as it is computed: home, the cold kitchen put right, the hot one as it settles.</summary>
    [Theory]
    [InlineData("potato-rolls-home")]
    [InlineData("potato-rolls-winter-cottage", "--kitchen", "winter-cottage", "--dough", "26C", "--free", "potato,scald", "--why", "bulk")]
    [InlineData("potato-rolls-summer", "--kitchen", "summer")]
    public void PotatoRolls(string name, params string[] options) => Checked(name, Run.Of(["rehearse", House.PotatoRolls, .. options]).Output);

    [Theory]
    [InlineData("place-cottage", "--to", "26C", "--kitchen", "winter-cottage")]
    [InlineData("place-summer", "--to", "25C", "--kitchen", "summer", "--measures", "us")]
    [InlineData("place-out-of-reach", "--to", "36C", "--air", "5C", "--step", "proof", "--lamp", "15W", "--open-water")]
    public void Places(string name, params string[] options) => Checked(name, Run.Of(["place", House.PotatoRolls, .. options]).Output);

    [Fact]
    public void FaultsOfACommandLine() => Checked(
        "command-line-faults",
        Run.Of("rehearse", House.PotatoRolls, "--aer", "17C", "--air", "17", "--altitude", "9000m", "--bowl", "scalt=none", "--dough", "26C").Messages);

    private static void Checked(string name, string text)
    {
        Assert.All(text.Split('\n'), line => Assert.InRange(Page.WidthOf(line), 0, Page.Width));
        Assert.DoesNotContain('{', text);
        Golden.Check(name, text);
    }
}

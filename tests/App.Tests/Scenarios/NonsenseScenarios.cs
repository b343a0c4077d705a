namespace Doughwright.App.Tests.Scenarios;

/// <summary>Values that no kitchen has are told as errors, and what hangs on them is not computed from nonsense: at home and elsewhere.</summary>
public class NonsenseScenarios
{
    [Theory]
    [InlineData("ends: at 2 times its volume", "ends: at 0.5 times its volume")]
    [InlineData("ends: at 2 times its volume", "ends: at 900 times its volume")]
    [InlineData("measured: 105 min", "measured: 0 min")]
    [InlineData("measured: 70 min", "measured: 0 min")]
    [InlineData("measured: 95 min", "measured: 0 min")]
    [InlineData("measured: 19 min", "measured: 0 min")]
    [InlineData("measured: 19 min", "measured: 19 min and 20 C")]
    [InlineData("measured: 26 C", "measured: 99 C")]
    [InlineData("depth: 1 cm", "depth: 0 cm")]
    [InlineData("instant yeast: 4 g", "instant yeast: 400 g")]
    [InlineData("ends: at 2 times its volume", "ends: at 9 times its volume")]
    public void Nonsense_IsAnErrorAndNeverAFaultOfOurs(string sound, string nonsense)
    {
        var text = File.ReadAllText(House.PotatoRolls).Replace(sound, nonsense, StringComparison.Ordinal);
        foreach (string[] where in (string[][])[[], ["--air", "24C"], ["--air", "17C", "--dough", "26C", "--free", "potato,scald"]])
        {
            var run = Run.WithInput(text, ["rehearse", "-", "--json", .. where]);
            Assert.Equal(1, run.ExitCode);
            Assert.DoesNotContain("Infinity", run.Output, StringComparison.Ordinal);
            Assert.DoesNotContain("NaN", run.Output, StringComparison.Ordinal);
        }
    }
}

namespace Doughwright.App.Tests.Scenarios;

/// <summary>Broken and sound texts from the command line.</summary>
public class TextScenarios
{
    [Fact]
    public void TwelveFaults_InOneRun()
    {
        var broken = Scene.FindingsOf(House.Text("potato-rolls-twelve-faults.yaml"));
        Assert.Equal(3, broken.ExitCode);
        Assert.Equal(12, broken.Kinds.Distinct().Count());
        Assert.All(broken.Findings, finding =>
        {
            Assert.True(finding.GetProperty("line").GetInt32() > 0);
            Assert.True(finding.GetProperty("column").GetInt32() > 0);
            Assert.Equal("error", finding.GetProperty("grade").GetString());
            Assert.NotEmpty(finding.GetProperty("message").GetString()!);
            Assert.NotEmpty(finding.GetProperty("wayOut").GetString()!);
        });
    }

    /// <summary>The clock of scald and potato is quiet: it stops when they are mixed in, within two hours.</summary>
    [Fact]
    public void SoundRolls_HaveOnlySafetyHints()
    {
        foreach (var scene in new[] { Scene.FindingsOf(House.PotatoRolls), Scene.Formula(House.PotatoRolls), Scene.Rehearse() })
        {
            Assert.Equal(0, scene.ExitCode);
            Assert.Equal(["allergens", "boiling-liquid", "raw-flour-and-egg"], scene.Kinds.Order());
            Assert.All(scene.Findings, finding =>
            {
                Assert.Equal("hint", finding.GetProperty("grade").GetString());
                Assert.True(finding.GetProperty("safety").GetBoolean());
            });
        }
    }
}

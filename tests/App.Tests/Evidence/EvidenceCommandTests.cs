using System.Text.Json;
using Doughwright.App.Commands;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Evidence;

/// <summary>The command over folders of cases, also outside the project.</summary>
public sealed class EvidenceCommandTests : IDisposable
{
    private const string Boiling = """
        doughwright: 1
        case: kettle
        title: A kettle in the Kestrel cottage
        kind: boiling
        source:
          title: Nobody
          read: from memory
          licence: ours
        conditions:
          of: water
        measured:
          boiling point by altitude:
            tolerance: 1 K
            because: made up
            points:
              - 1,200 m, 96 C

        """;

    private readonly string folder = Directory.CreateTempSubdirectory("cases-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private void Lay(string name, string text)
    {
        var path = Path.Join(folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    [Fact]
    public void AgreeingCase_IsNought_AndFoldersUnderItAreLookedAt()
    {
        Lay("there/deeper/kettle.yaml", Boiling);
        var run = Run.Of("evidence", folder);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("1 of 1 series lie within tolerance, 0 do not.", run.Output, StringComparison.Ordinal);
        Assert.Equal("", run.Messages);
    }

    [Fact]
    public void CaseOutOfTolerance_IsOne_AndIsPrintedAsWell()
    {
        Lay("a.yaml", Boiling);
        Lay("b.yaml", Boiling.Replace("96 C", "90 C", StringComparison.Ordinal).Replace("case: kettle", "case: pot", StringComparison.Ordinal));
        var run = Run.Of("evidence", folder);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("Out: pot", run.Output, StringComparison.Ordinal);
        Assert.Contains("1 of 2 series", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void TextThatIsNotUnderstood_IsThree_AndTheOthersAreRun()
    {
        Lay("a.yaml", Boiling);
        Lay("b.yaml", Boiling.Replace("1,200 m, 96 C", "high up, NaN", StringComparison.Ordinal).Replace("case: kettle", "case: pot", StringComparison.Ordinal));
        var run = Run.Of("evidence", folder, "--json");
        Assert.Equal(3, run.ExitCode);
        using var json = JsonDocument.Parse(run.Output);
        Assert.Equal("kettle", Assert.Single(json.RootElement.GetProperty("cases").EnumerateArray()).GetProperty("id").GetString());
        var places = json.RootElement.GetProperty("findings").EnumerateArray().Select(finding => (finding.GetProperty("place").GetString(), finding.GetProperty("line").GetInt32())).ToArray();
        Assert.Contains(("b.yaml: measured.boiling-point-by-altitude.points", 16), places);
    }

    [Fact]
    public void SameNameTwice_IsTold()
    {
        Lay("a.yaml", Boiling);
        Lay("b.yaml", Boiling);
        var run = Run.Of("evidence", folder);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("Two cases are called kettle", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void TableBesideTheText_IsRead_AndOneElsewhereIsNot()
    {
        var text = Boiling[..Boiling.IndexOf("    points:", StringComparison.Ordinal)];
        Lay("a/kettle.yaml", text + "    file: boils.csv\n");
        Lay("a/boils.csv", "height (m),boils (C)\n0,100\n1200,96\n");
        Assert.Equal(0, Run.Of("evidence", folder).ExitCode);
        Lay("boils.csv", "height (m),boils (C)\n0,100\n");
        Lay("a/kettle.yaml", text + "    file: ../boils.csv\n");
        Assert.Equal(3, Run.Of("evidence", folder).ExitCode);
    }

    [Theory]
    [InlineData("no-such-folder", "There is no folder")]
    [InlineData("", "No case lies in")]
    public void NoFolderOrNothingInIt_IsTwo(string under, string said)
    {
        var run = Run.Of("evidence", Path.Join(folder, under));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(said, run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void NoFolderNamed_IsTwo() => Assert.Equal(2, Run.Of("evidence").ExitCode);

    [Fact]
    public void TextInOtherLetters_AndTextWithoutEnd_AreFindings()
    {
        Lay("a.yaml", Boiling);
        File.WriteAllBytes(Path.Join(folder, "b.yaml"), [0xff, 0xfe, 0x00, 0xc3, 0x28]);
        Lay("c.yaml", new string('x', 2_000_000));
        var run = Run.Of("evidence", folder);
        Assert.Equal(3, run.ExitCode);
        Assert.Contains("1 of 1 series", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void OneTextAlone_IsTaken()
    {
        Lay("a.yaml", Boiling);
        Assert.Equal(0, Run.Of("evidence", Path.Join(folder, "a.yaml")).ExitCode);
    }

    [Theory]
    [InlineData("preferment-guide")]
    [InlineData("zhang-2005")]
    [InlineData("sphere-series")]
    public void Page_IsTheApprovedOne(string source) =>
        Golden.Check($"evidence-{source}", Run.Of("evidence", House.PathTo("tests", "data", "published", source)).Output);

    [Fact]
    public void StoppedRun_TellsWhatItHas()
    {
        Lay("a.yaml", Boiling);
        Lay("b.yaml", Boiling.Replace("case: kettle", "case: pot", StringComparison.Ordinal));
        using var stop = new CancellationTokenSource();
        var voice = new Voice(Words.Shipped, MeasureSystem.Metric);
        var run = EvidenceRun.Of(CaseFolder.Read(folder, new(voice))!, _ => stop.Cancel(), stop.Token);
        Assert.Single(run.Cases);
        Assert.Equal("evidence-stopped", Assert.Single(run.Faults).Kind);
    }

    [Fact]
    public void Progress_IsToldOnlyWhenItTakesLong()
    {
        using var messages = new StringWriter();
        var progress = new ProgressLines(messages, new(Words.Shipped, MeasureSystem.Metric), "evidence-progress", 3);
        progress.Done(1);
        Assert.Equal("", messages.ToString());
        Thread.Sleep(1100);
        progress.Done(2);
        Assert.Equal("2 of 3 texts", messages.ToString().Trim());
    }
}

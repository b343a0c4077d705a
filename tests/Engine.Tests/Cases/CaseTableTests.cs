namespace Doughwright.Engine.Tests.Cases;

/// <summary>A table beside a case: units in its first line, plain figures under it.</summary>
public class CaseTableTests
{
    private static readonly string Points = CaseSamples.Ball[CaseSamples.Ball.IndexOf("    points:", StringComparison.Ordinal)..];

    private static (string Kind, int Line)[] Found(string? table, string name = "core.csv") =>
        [.. CaseSamples.Found(CaseSamples.With(Points, $"    file: {name}\n", table)).Select(found => (found.Kind, found.Line))];

    [Fact]
    public void SoundTable_GivesTheSameFiguresAsPoints()
    {
        var reading = CaseSamples.With(Points, "    file: core.csv\n", "# typed in\ntime (h),core (F),within (K)\n0.5,75.2,1\n\n1,68,2\n");
        Assert.Empty(reading.Findings);
        Assert.Equal([(0.5, 24.0, 1.0), (1.0, 20.0, 2.0)], reading.Case!.Series[0].Points.Select(point => (point.At!.Value, Math.Round(point.Value, 9), point.Tolerance)));
    }

    [Theory]
    [InlineData("time,core\n1,2\n", "unit-missing", 2)]
    [InlineData("time (min)\n1\n", "case-table-head", 1)]
    [InlineData("time (min,core (C)\n1,2\n", "case-table-head", 1)]
    [InlineData("time (min),core (g)\n1,2\n", "unit-of-another-kind", 2)]
    [InlineData("time (min),core (C)\n1,2\n3\n4,5,6\n", "case-table-row", 3)]
    [InlineData("time (min),core (C)\n1,NaN\n", "number-missing", 2)]
    [InlineData("time (min),core (C)\n1,1e99\n", "number-not-plain", 2)]
    [InlineData("time (min),core (C)\n1,9999\n", "case-figure-outside", 2)]
    [InlineData("time (min),core (C)\n", "case-rows-missing", 1)]
    [InlineData("", "case-table-head", 1)]
    public void Fault_IsToldWithItsLine(string table, string kind, int line) => Assert.Contains((kind, line), Found(table));

    [Fact]
    public void TableThatIsNotThere_IsTold() => Assert.Contains(("case-table-missing", 22), Found(null));

    [Theory]
    [InlineData("../core.csv")]
    [InlineData("/etc/passwd")]
    [InlineData(".hidden")]
    public void TableOutsideTheFolder_IsRefused(string name) => Assert.Contains(("case-table-name", 22), Found("time (min),core (C)\n1,2\n", name));
}

using System.Text.Json;

namespace Doughwright.App.Tests.Commands;

/// <summary>compare FILE FILE --because: what moved each figure.</summary>
public sealed class CompareBecauseTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("because-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string Changed()
    {
        var file = Path.Join(folder, "changed.yaml");
        File.WriteAllText(file, File.ReadAllText(House.PotatoRolls)
            .Replace("sugar: 30 g", "sugar: 60 g", StringComparison.Ordinal).Replace("instant yeast: 4 g", "instant yeast: 6 g", StringComparison.Ordinal));
        return file;
    }

    /// <summary>An independent sum: whatever is left over is named, so that the parts come to the whole.</summary>
    [Fact]
    public void Causes_AddUpToTheirFigure()
    {
        using var json = JsonDocument.Parse(Run.Of("compare", House.PotatoRolls, Changed(), "--because", "--json").Output);
        var moved = json.RootElement.GetProperty("run").EnumerateArray().Concat(json.RootElement.GetProperty("formula").EnumerateArray())
            .Where(figure => figure.GetProperty("by").ValueKind == JsonValueKind.Number && Math.Abs(figure.GetProperty("by").GetDouble()) > 1e-3).ToArray();
        Assert.True(moved.Length > 10, $"{moved.Length} figures moved");
        Assert.All(moved, figure => Assert.Equal(
            figure.GetProperty("by").GetDouble(),
            figure.GetProperty("causes").EnumerateArray().Sum(cause => cause.GetProperty("by").GetDouble()),
            tolerance: 1e-5));
    }

    /// <summary>Thirty grams more of sugar are thirty grams more of dough, and two of yeast two.</summary>
    [Fact]
    public void DoughsCauses_AreTheGramsThatWereWritten()
    {
        using var json = JsonDocument.Parse(Run.Of("compare", House.PotatoRolls, Changed(), "--because", "--json").Output);
        var dough = json.RootElement.GetProperty("formula").EnumerateArray().Single(figure => figure.GetProperty("figure").GetString() == "dough").GetProperty("causes");
        Assert.Equal(
            [("sugar", 30.0), ("instant-yeast", 2.0)],
            dough.EnumerateArray().Select(cause => (cause.GetProperty("line").GetString()!, Math.Round(cause.GetProperty("by").GetDouble(), 6))));
    }

    /// <summary>Two recipes that differ in very much: where what is left over is more than any change alone, that comes first and is said, and the page says what it means.</summary>
    [Fact]
    public void WhereTogetherOutweighsEveryChange_ThatIsSaid_AndOnlyThere()
    {
        var run = Run.Of("compare", House.Demo("tin-loaf.yaml"), House.PotatoRolls, "--because");
        Assert.Equal(0, run.ExitCode);
        var told = string.Join(' ', run.Output.Replace('\u00a0', ' ').Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("differ in too much for its causes to be told apart", told, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(Run.Of("compare", House.Demo("tin-loaf.yaml"), House.PotatoRolls, "--because", "--json").Output);
        var (most, less) = (0, 0);
        foreach (var (name, of, row) in new[] { ("bulk", "minutes", "Bulk +32 min: "), ("proof", "minutes", "Final proof +15 min: "), ("", "hands", "By hand +23 min: ") })
        {
            var causes = json.RootElement.GetProperty("run").EnumerateArray().Single(figure => figure.GetProperty("figure").GetString() == of && figure.GetProperty("of").GetString() == name).GetProperty("causes");
            var by = causes.EnumerateArray().ToLookup(cause => cause.GetProperty("aspect").ValueKind == JsonValueKind.Null, cause => Math.Abs(cause.GetProperty("by").GetDouble()));
            Assert.True(by[true].Sum() > by[false].Max() + 1, row);
            Assert.Matches(System.Text.RegularExpressions.Regex.Escape(row) + @"together [+−][\dh min]+, more than any one change alone, ", told);
            most++;
        }

        foreach (var row in new[] { "Dough −129 g: Milk", "All sugar −0.9: Sugar" })
        {
            Assert.Contains(row, told, StringComparison.Ordinal);
            less++;
        }

        Assert.Equal((3, 2), (most, less));
        Assert.DoesNotContain("more than any one change alone", Run.Of("compare", House.PotatoRolls, Changed(), "--because").Output, StringComparison.Ordinal);
        Assert.DoesNotContain("too much for its causes", Run.Of("compare", House.PotatoRolls, Changed(), "--because").Output.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void Page_TellsThemInWords_AndOnlyWhenAsked()
    {
        var asked = Run.Of("compare", House.PotatoRolls, Changed(), "--because");
        Assert.Equal(0, asked.ExitCode);
        Assert.Matches(@"Bulk.* −\d+ min: Instant yeast \(Dough\) −\d+ min, Sugar \(Dough\) \+\d+ min, together [+−]\d+ min\.", string.Join(' ', asked.Output.Replace('\u00a0', ' ').Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
        Assert.DoesNotContain("together", Run.Of("compare", House.PotatoRolls, Changed()).Output, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(Run.Of("compare", House.PotatoRolls, Changed(), "--json").Output);
        Assert.All(json.RootElement.GetProperty("run").EnumerateArray(), figure => Assert.Equal(JsonValueKind.Null, figure.GetProperty("causes").ValueKind));
    }
}

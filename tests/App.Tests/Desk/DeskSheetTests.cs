using System.Text.RegularExpressions;
using Doughwright.App.Desk.Recipes.Views;

namespace Doughwright.App.Tests.Desk;

/// <summary>The sheet of styles holds what pages use, and no more.</summary>
public partial class DeskSheetTests
{
    private static readonly string[] Sheets = [.. new[] { "desk.css", "book.css" }.Select(name => File.ReadAllText(House.PathTo("src", "Doughwright.App", "wwwroot", name)))];

    private static readonly string Sheet = string.Concat(Sheets);

    [Fact]
    public void EverySheet_HasAtMost500Lines() => Assert.All(Sheets, sheet => Assert.InRange(sheet.Split('\n').Length, 100, 500));

    /// <summary>A class is written in a page, set by the desk's script, or drawn by code on a line that quotes something. What the circuit sets and what is counted has its own names.</summary>
    [Fact]
    public void EveryClass_IsUsedSomewhere()
    {
        var sources = new[] { "Doughwright.App", "Doughwright.Publishing" }
            .SelectMany(project => Directory.EnumerateFiles(House.PathTo("src", project), "*", SearchOption.AllDirectories))
            .Where(file => file.EndsWith(".razor", StringComparison.Ordinal) || file.EndsWith(".cs", StringComparison.Ordinal))
            .Where(file => !file.Contains("/obj/", StringComparison.Ordinal))
            .SelectMany(File.ReadLines)
            .Where(line => line.Contains('"', StringComparison.Ordinal) && !line.TrimStart().StartsWith("//", StringComparison.Ordinal))
            .Concat(Directory.EnumerateFiles(House.PathTo("src", "Doughwright.App", "wwwroot"), "*.js").SelectMany(File.ReadLines).Where(line => line.Contains("classList", StringComparison.Ordinal)));
        var quoted = sources.SelectMany(line => Word().Matches(line)).Select(match => match.Value).ToHashSet(StringComparer.Ordinal);
        var named = ClassName().Matches(Body().Replace(Comment().Replace(Sheet, ""), "{}")).Select(match => match.Groups[1].Value).ToHashSet(StringComparer.Ordinal);
        Assert.InRange(named.Count, 100, 1000);
        Assert.Equal([], named.Where(name => !quoted.Contains(name) && !Counted().IsMatch(name) && !name.StartsWith("components-reconnect-", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
    }

    /// <summary>On a phone each group of columns that can be picked has its rule; where there are more, none is to be picked.</summary>
    [Fact]
    public void GroupsThatArePicked_HaveTheirRules()
    {
        Assert.Equal(
            Enumerable.Range(0, FormulaView.MostPicked),
            Picked().Matches(Sheet).Select(match => int.Parse(match.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture)));
        Assert.True(Of(FormulaView.MostPicked).IsPicked);
        Assert.False(Of(FormulaView.MostPicked + 1).IsPicked);
    }

    private static FormulaView Of(int groups) => new([.. Enumerable.Range(0, groups).Select(group => $"{group}")], "g", "°C", [], null!, null!);

    [GeneratedRegex(@"[A-Za-z][\w-]*")]
    private static partial Regex Word();

    [GeneratedRegex(@"\.([A-Za-z][\w-]*)")]
    private static partial Regex ClassName();

    [GeneratedRegex(@"\{[^{}]*\}")]
    private static partial Regex Body();

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"^g\d$")]
    private static partial Regex Counted();

    [GeneratedRegex(@"#cols-(\d+):checked\) \.formula \.gc:not\(\.g\1\)")]
    private static partial Regex Picked();
}

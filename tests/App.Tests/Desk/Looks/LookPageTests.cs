using System.Text;
using System.Text.RegularExpressions;

namespace Doughwright.App.Tests.Desk.Looks;

/// <summary>The page that tells how it looks tells what the sheets hold. ACCEPT=1 writes its table of tokens anew.</summary>
public partial class LookPageTests
{
    private const string Begin = "<!-- tokens -->\n";
    private const string End = "<!-- end of tokens -->";

    private static readonly string Page = House.PathTo("docs", "look.md");

    [Fact]
    public void Tokens_AreThoseOfTheSheet()
    {
        var page = File.ReadAllText(Page).ReplaceLineEndings("\n");
        var (from, to) = (page.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length, page.IndexOf(End, StringComparison.Ordinal));
        var real = page[..from] + Table(Sheet("tokens.css")) + page[to..];
        if (Environment.GetEnvironmentVariable("ACCEPT") == "1")
        {
            File.WriteAllText(Page, real);
        }

        Assert.Equal(real, File.ReadAllText(Page).ReplaceLineEndings("\n"));
    }

    [Fact]
    public void EveryClassNamed_IsInASheet()
    {
        var named = File.ReadLines(Page).Where(line => line.StartsWith("| ", StringComparison.Ordinal) && line.Count(sign => sign == '|') == 4)
            .SelectMany(line => Code().Matches(line.Split('|')[2])).SelectMany(match => match.Groups[1].Value.Split(' '))
            .Where(name => !name.Contains('.', StringComparison.Ordinal)).Distinct(StringComparer.Ordinal).ToArray();
        var sheets = string.Concat(new[] { "desk.css", "book.css" }.Select(Sheet));
        Assert.InRange(named.Length, 40, 200);
        Assert.All(named, name => Assert.Matches($@"\.{Regex.Escape(name)}(?![\w-])", sheets));
    }

    /// <summary>Where a size, a pace or a colour is read that is defined nowhere, nothing is shown, and nobody is told.</summary>
    [Fact]
    public void EveryTokenUsed_IsDefined()
    {
        var defined = Named().Matches(Sheet("tokens.css")).Select(match => match.Groups[1].Value).ToHashSet(StringComparer.Ordinal);
        var used = new[] { "tokens.css", "desk.css", "book.css" }.SelectMany(name => Read().Matches(Sheet(name))).Select(match => match.Groups[1].Value);
        Assert.Empty(used.Except(defined, StringComparer.Ordinal));
    }

    private static string Table(string sheet)
    {
        var parts = new[] { "light", "dark", "print" }.ToDictionary(name => name, name => Tokens(PartOf(sheet, name)), StringComparer.Ordinal);
        var table = new StringBuilder("| token | light | dark | in print |\n|---|---|---|---|\n");
        foreach (var (name, value) in parts["light"])
        {
            table.Append(null, $"| `{name}` | {value} | {Other("dark", name)} | {Other("print", name)} |\n");
        }

        return table.ToString();

        string Other(string part, string name) => parts[part].FirstOrDefault(token => token.Name == name).Value ?? "";
    }

    private static string PartOf(string sheet, string name)
    {
        var head = name switch { "dark" => "@media (prefers-color-scheme: dark)", "print" => "@media print", _ => ":root" };
        var from = sheet.IndexOf(head, StringComparison.Ordinal);
        return sheet[from..sheet.IndexOf('}', from)];
    }

    private static List<(string Name, string? Value)> Tokens(string part) =>
        [.. Token().Matches(part).Select(match => (match.Groups[1].Value, (string?)$"`{match.Groups[2].Value}`{(match.Groups[3].Success ? " " + match.Groups[3].Value.Trim() : "")}"))];

    private static string Sheet(string name) => File.ReadAllText(House.PathTo("src", "Doughwright.App", "wwwroot", name)).ReplaceLineEndings("\n");

    [GeneratedRegex(@"(--[\w-]+):\s*([^;]+);(?:[ \t]*/\*(.*?)\*/)?")]
    private static partial Regex Token();

    [GeneratedRegex(@"(--[\w-]+):")]
    private static partial Regex Named();

    [GeneratedRegex(@"var\((--[\w-]+)")]
    private static partial Regex Read();

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Code();
}

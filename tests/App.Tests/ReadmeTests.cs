using System.Text.RegularExpressions;

namespace Doughwright.App.Tests;

/// <summary>
/// README shows what the program really prints: a block "console 1-12, 30-34" holds a command and those lines of its output. ACCEPT=1 writes
/// them anew.
/// </summary>
public partial class ReadmeTests
{
    private const string LeftOut = "...";
    private static readonly string Path = House.PathTo("README.md");

    [Fact]
    public void QuotedOutput_IsWhatTheProgramPrints()
    {
        var readme = File.ReadAllText(Path).ReplaceLineEndings("\n");
        var real = Block().Replace(readme, block => Quoted(block.Groups["lines"].Value, block.Groups["command"].Value));
        if (Environment.GetEnvironmentVariable("ACCEPT") == "1")
        {
            File.WriteAllText(Path, real);
        }

        Assert.Equal(4, Block().Count(readme));
        Assert.Equal(real, File.ReadAllText(Path).ReplaceLineEndings("\n"));
    }

    [Fact]
    public void Readme_IsShort() => Assert.InRange(File.ReadLines(Path).Count(), 1, 149);

    [Fact]
    public void Links_LeadSomewhere() => Assert.All(
        Link().Matches(File.ReadAllText(Path)).Select(match => House.PathTo(match.Groups["to"].Value)),
        target => Assert.True(File.Exists(target) || Directory.Exists(target), target));

    private static string Quoted(string lines, string command)
    {
        var words = command.Split(' ').Select(word => word.EndsWith(".yaml", StringComparison.Ordinal) ? House.PathTo(word) : word);
        var output = Run.Of([.. words]).Output.Replace('\u00a0', ' ').Split('\n').Select(line => line.TrimEnd()).ToArray();
        var parts = lines.Split(", ").Select(range => range.Split('-').Select(int.Parse).ToArray());
        var shown = string.Join($"\n{LeftOut}\n", parts.Select(range => string.Join('\n', output[(range[0] - 1)..Math.Min(range[1], output.Length)]).TrimEnd('\n')));
        return $"```console {lines}\n$ ./doughwright {command}\n{shown}\n```\n";
    }

    [GeneratedRegex(@"```console (?<lines>[0-9, -]+)\n\$ \./doughwright (?<command>[^\n]+)\n(?:(?!```).*\n)*```\n")]
    private static partial Regex Block();

    [GeneratedRegex(@"\]\((?<to>[^)#]+)\)")]
    private static partial Regex Link();
}

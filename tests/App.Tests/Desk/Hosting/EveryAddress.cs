using System.Text.RegularExpressions;

namespace Doughwright.App.Tests.Desk.Hosting;

/// <summary>Every page of the desk by an address that leads there: a form may be sent to any of them.</summary>
public sealed partial class EveryAddress : TheoryData<string>
{
    public EveryAddress()
    {
        AddRange(All().ToArray());
    }

    public static IReadOnlyList<string> All() =>
    [
        .. Directory.EnumerateFiles(House.PathTo("src", "Doughwright.App", "Desk"), "*.razor", SearchOption.AllDirectories)
            .SelectMany(File.ReadLines).Select(line => Page().Match(line)).Where(match => match.Success)
            .Select(match => Place().Replace(match.Groups[1].Value, "potato-rolls")).Order(StringComparer.Ordinal),
    ];

    [GeneratedRegex("^@page \"([^\"]+)\"")]
    private static partial Regex Page();

    [GeneratedRegex(@"\{[^}]+\}")]
    private static partial Regex Place();
}

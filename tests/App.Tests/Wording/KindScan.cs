using System.Text.RegularExpressions;

namespace Doughwright.App.Tests.Wording;

/// <summary>Finds the kinds of findings, reasons and events in the source of the engine, so that none is without words.</summary>
internal static partial class KindScan
{
    private static readonly Lazy<string> Engine = new(() => string.Join('\n', House.Sources("Doughwright.Engine").Select(File.ReadAllText)));
    private static readonly Lazy<string> Constants = new(() => string.Join('\n', House.Sources("Doughwright.Engine").Where(HoldsKinds).Select(File.ReadAllText)));
    private static readonly Lazy<string> App = new(() => string.Join('\n', House.Sources("Doughwright.App").Concat(House.Sources("Doughwright.Publishing")).Concat(House.Sources("Doughwright.Book")).Select(File.ReadAllText)));

    /// <summary>Kinds of findings with their grades, "error" before "warning" before "hint".</summary>
    public static SortedDictionary<string, SortedSet<string>> Findings()
    {
        var kinds = new SortedDictionary<string, SortedSet<string>>(StringComparer.Ordinal);
        void Add(string kind, string? grade)
        {
            kinds.TryAdd(kind, []);
            if (grade is not null)
            {
                kinds[kind].Add(grade.ToLowerInvariant());
            }
        }

        foreach (Match match in WithGrade().Matches(Engine.Value + App.Value))
        {
            Add(match.Groups["kind"].Value, match.Groups["grade"].Value);
            if (match.Groups["other"].Success)
            {
                Add(match.Groups["other"].Value, match.Groups["grade"].Value);
            }
        }

        foreach (Match match in OutsideLimits().Matches(Engine.Value))
        {
            Add(match.Groups["kind"].Value, "error");
        }

        // Constants of the reader: how they are logged says their grade.
        foreach (Match match in Constant().Matches(Constants.Value))
        {
            var name = match.Groups["name"].Value;
            var logged = Regex.Matches(Engine.Value, $@"\b(?<log>Fault|Wrong|Warn|Hint)\([^;]*?\b(?:\w+Faults)\.{name}\b", RegexOptions.Singleline);
            foreach (Match log in logged)
            {
                Add(match.Groups["kind"].Value, log.Groups["log"].Value switch { "Warn" => "warning", "Hint" => "hint", _ => "error" });
            }

            var graded = Regex.Matches(Engine.Value, $@"\b\w+Faults\.{name},\s*(?:Grade = )?Grade\.(?<grade>\w+)");
            foreach (Match grade in graded)
            {
                Add(match.Groups["kind"].Value, grade.Groups["grade"].Value);
            }

            Add(match.Groups["kind"].Value, logged.Count + graded.Count == 0 ? "error" : null);
        }

        foreach (Match match in QuantityFault().Matches(Engine.Value))
        {
            Add(match.Groups["kind"].Value, "error");
        }

        // A change that cannot be made is refused in the words of a finding.
        foreach (Match match in Refusal().Matches(Engine.Value))
        {
            Add(match.Groups["kind"].Value, "error");
        }

        return kinds;
    }

    public static IEnumerable<string> Reasons() => Reason().Matches(Engine.Value).Select(match => match.Groups["kind"].Value).Distinct().Order(StringComparer.Ordinal);

    public static IEnumerable<string> Events() => Event().Matches(Engine.Value).Select(match => match.Groups["kind"].Value).Distinct();

    /// <summary>Whether a kind stands anywhere in the source, in quotation marks.</summary>
    public static bool IsUsed(string kind) => new[] { $"\"{kind}\"", $"\"{kind}.message\"" }
        .Any(quoted => Engine.Value.Contains(quoted, StringComparison.Ordinal) || App.Value.Contains(quoted, StringComparison.Ordinal));

    private static bool HoldsKinds(string file) => new[] { "Faults.cs", "Findings.cs", "Kinds.cs" }.Any(end => file.EndsWith(end, StringComparison.Ordinal));

    [GeneratedRegex("""(?:"(?<other>[a-z]+(?:-[a-z0-9]+)*)"\s*:\s*)?"(?<kind>[a-z]+(?:-[a-z0-9]+)*)",?\s*(?:Grade = )?Grade\.(?<grade>\w+)""")]
    private static partial Regex WithGrade();

    [GeneratedRegex("""(?:new|Celsius)\("(?<kind>[a-z-]+-outside-limits)\x22""")]
    private static partial Regex OutsideLimits();

    [GeneratedRegex("""EditAnswer\.Refuse\(\s*"(?<kind>edit-[a-z-]+)\x22""")]
    private static partial Regex Refusal();

    [GeneratedRegex("""const string (?<name>\w+) = "(?<kind>[a-z]+(?:-[a-z0-9]+)+|tab|anchor|tag|brackets|indentation|escape|circle)";""")]
    private static partial Regex Constant();

    [GeneratedRegex("""QuantityFault\.\w+ => "(?<kind>[a-z-]+)""")]
    private static partial Regex QuantityFault();

    [GeneratedRegex("""Reason\.(?:Leaf|Sum|From)\(\s*"(?<kind>[a-z0-9-]+)""")]
    private static partial Regex Reason();

    [GeneratedRegex("""new StepEvent\(\s*"(?<kind>[a-z-]+)""")]
    private static partial Regex Event();
}

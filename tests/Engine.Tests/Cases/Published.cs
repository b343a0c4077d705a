using Doughwright.Engine.Cases;
using Doughwright.Engine.Tests.TextForm;

namespace Doughwright.Engine.Tests.Cases;

/// <summary>The published cases of the project: what somebody measured, read from where it lies.</summary>
internal static class Published
{
    public static IReadOnlyList<string> Files { get; } =
        [.. Directory.EnumerateFiles(Path.Join(Texts.Root, "tests", "data", "published"), "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];

    private static readonly Lazy<IReadOnlyDictionary<string, PublishedCase>> Read = new(() => Files.Select(ReadFile)
        .Select(reading => reading.Case ?? throw new InvalidOperationException($"{reading.Id}: {string.Join(", ", reading.Findings.Select(finding => finding.Id))}"))
        .ToDictionary(published => published.Id));

    public static IReadOnlyDictionary<string, PublishedCase> Cases => Read.Value;

    public static CaseReading ReadFile(string path) => CaseText.Read(File.ReadAllText(path), table =>
        Path.Join(Path.GetDirectoryName(path), table) is var beside && File.Exists(beside) ? File.ReadAllText(beside) : null);

    /// <summary>A case held against the models, one of its series.</summary>
    public static SeriesResult Run(string id, string quantity) =>
        CaseRunner.Run(Cases[id]).Series.Single(series => series.Series.Quantity == quantity);
}

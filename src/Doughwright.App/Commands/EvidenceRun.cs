using System.Text;
using Doughwright.Engine.Cases;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Commands;

/// <summary>The cases of a folder, held against the models.</summary>
/// <param name="State">A hash of all texts and tables that were read, in their order.</param>
/// <param name="Cases">Those that were understood and run, in the order of their names.</param>
/// <param name="Faults">What is wrong with texts.</param>
internal sealed record EvidenceRun(string State, IReadOnlyList<CaseResult> Cases, IReadOnlyList<Finding> Faults)
{
    /// <summary>What is wrong with texts, and why a series could not be run.</summary>
    public IEnumerable<Finding> Findings => Faults.Concat(
        Series.SelectMany(held => held.Result.Refusal is { } refusal ? [CaseFolder.In(held.Case.Id, refusal)] : Array.Empty<Finding>()));

    /// <summary>Every series with its case.</summary>
    public IEnumerable<(PublishedCase Case, SeriesResult Result)> Series => Cases.SelectMany(held => held.Series.Select(series => (held.Case, series)));

    /// <param name="done">Told after each text how many are done.</param>
    /// <param name="stop">Ends the run early, with what there is.</param>
    public static EvidenceRun Of(CaseFolder folder, Action<int> done, CancellationToken stop)
    {
        var (cases, findings, all) = (new List<CaseResult>(), new List<Finding>(), new StringBuilder());
        var taken = new Dictionary<string, string>(StringComparer.Ordinal);
        for (var index = 0; index < folder.Texts.Count; index++)
        {
            if (stop.IsCancellationRequested)
            {
                findings.Add(new()
                {
                    Kind = "evidence-stopped",
                    Grade = Grade.Error,
                    Place = "",
                    Arguments = new Dictionary<string, object> { ["done"] = index, ["all"] = folder.Texts.Count },
                });
                break;
            }

            if (Take(folder, folder.Texts[index], taken, findings, all) is { } published)
            {
                cases.Add(CaseRunner.Run(published));
            }

            done(index + 1);
        }

        return new(StateId.OfText(all.ToString()), cases, [.. findings.OrderByDescending(finding => finding.Grade)]);
    }

    private static PublishedCase? Take(CaseFolder folder, string path, Dictionary<string, string> taken, List<Finding> findings, StringBuilder all)
    {
        var name = folder.NameOf(path);
        if (Text(path) is not { } file)
        {
            findings.Add(new() { Kind = "case-unreadable", Grade = Grade.Error, Place = name, Arguments = new Dictionary<string, object> { ["file"] = name } });
            return null;
        }

        all.Append(name).Append('\n').Append(file.Text);
        var reading = CaseText.Read(file.Text, table =>
        {
            var text = Text(Path.Join(Path.GetDirectoryName(path), table))?.Text;
            all.Append(table).Append('\n').Append(text);
            return text;
        });
        findings.AddRange(file.Findings.Concat(reading.Findings).Select(finding => CaseFolder.In(name, finding)));
        if (reading.Id.Length > 0 && !taken.TryAdd(reading.Id, name))
        {
            findings.Add(new()
            {
                Kind = "case-id-twice",
                Grade = Grade.Error,
                Place = name,
                Arguments = new Dictionary<string, object> { ["id"] = reading.Id, ["first"] = taken[reading.Id] },
            });
            return null;
        }

        return file.Findings.Count > 0 ? null : reading.Case;
    }

    private static InputFile? Text(string path) => CaseFolder.Open(path, new(new(Words.Shipped, MeasureSystem.Metric)));
}

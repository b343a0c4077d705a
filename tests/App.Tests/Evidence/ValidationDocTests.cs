using System.Text;
using Doughwright.App.Commands;
using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Cases;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Evidence;

/// <summary>docs/validation.md is a run over the published cases, written down. ACCEPT=1 writes it anew; look at what changed before.</summary>
public class ValidationDocTests
{
    private static readonly Voice Voice = new(Words.Shipped, MeasureSystem.Metric);

    private static readonly EvidenceRun Held = EvidenceRun.Of(
        CaseFolder.Read(House.PathTo("tests", "data", "published"), new(Voice))!, _ => { }, CancellationToken.None);

    [Fact]
    public void ThePage_IsWhatTheCasesComeTo() => Golden.CheckFile(House.PathTo("docs", "validation.md"), Page());

    [Fact]
    public void NoPublishedCase_IsFaulty() => Assert.DoesNotContain(Held.Findings, finding => finding.Kind is not "case-no-model");

    [Fact]
    public void EveryColumn_HasAHead() => Assert.All(
        Held.Series.Select(held => held.Result.Series.Along).Where(along => along.Length > 0).Distinct(),
        along => Assert.NotNull(Words.Shipped.Find($"along.{along.Replace(' ', '-')}")));

    private static string Page()
    {
        var sums = EvidenceSums.Of(Held);
        var page = new StringBuilder($"""
            # Validation: what others measured, against what is computed

            Made from the cases in [tests/data/published](../tests/data/published) by the same run as `./doughwright evidence tests/data/published`, with the models and
            the priors of every rehearsal, the same for all. How a case is written, and how it is scored: [evidence.md](evidence.md). Checks of formulas, laws, data and formats:
            [checks.md](checks.md).

            **{sums.In} of {sums.In + sums.Out} series lie within the tolerance of their measurement, {sums.Out} do not.** The 10 to 90 % range of the answers holds {sums.PointsInRange}
            of {sums.PointsWithRange} measured figures. Should the ranges mean what they say, they would hold about eight in ten; many of these figures are rules of the trade and bands from
            memory, whose own error is not in our range. Of what was read in print or in a copy {In(false)} series are in, of what is from memory {In(true)}. Not counted are {sums.Fitted} series to which a parameter was fitted, {sums.Formula} that were worked out from a formula, and {sums.NotRun} that
            no model answers yet.

            ## Out

            What does not agree, with the note of the case.


            """.ReplaceLineEndings("\n"));
        Rows(page, "why, as far as it is known", Evidence().Where(held => held.Result.Within == false), held => held.Case.Note ?? "");
        page.Append("\n## In\n\n");
        Rows(page, "conditions", Evidence().Where(held => held.Result.Within == true), held => Conditions(held.Case));
        page.Append("\n## Fitted: no evidence\n\nA parameter was fitted to these very figures, so agreement shows that the fit was typed in, and no more.\n\n");
        Rows(page, "note", Ran().Where(held => held.Case.Fitted), held => held.Case.Note ?? "");
        page.Append("\n## Computed: no evidence\n\nWorked out from a printed formula; they hold the program to the formula.\n\n");
        Rows(page, "conditions", Ran().Where(held => !held.Case.Fitted && !held.Case.IsEvidence), held => Conditions(held.Case));
        page.Append("\n## Not run\n\n");
        foreach (var (published, result) in Held.Series.Where(held => held.Result.Within is null))
        {
            page.Append($"- {published.Title}: {result.Series.Quantity}, {result.Series.Points.Count} figures. {FindingWords.Message(result.Refusal!, Voice)}\n");
        }

        page.Append("\n## Figure by figure\n");
        foreach (var held in Held.Cases)
        {
            Case(page, held);
        }

        return page.ToString().Replace('\u00a0', ' ');
    }

    private static string In(bool fromMemory)
    {
        var of = Evidence().Where(held => held.Case.Source.Read == HowRead.FromMemory == fromMemory).ToArray();
        return $"{of.Count(held => held.Result.Within == true)} of {of.Length}";
    }

    private static IEnumerable<(PublishedCase Case, SeriesResult Result)> Ran() => Held.Series.Where(held => held.Result.Within is not null);

    private static IEnumerable<(PublishedCase Case, SeriesResult Result)> Evidence() => Ran().Where(held => held.Case.IsEvidence);

    private static string Conditions(PublishedCase published) => string.Join("; ", published.Conditions.Select(one => $"{one.Key} {one.Words}"));

    private static void Rows(StringBuilder page, string last, IEnumerable<(PublishedCase Case, SeriesResult Result)> series, Func<(PublishedCase Case, SeriesResult Result), string> told)
    {
        page.Append($"| case | quantity | read | points in | RMSE | bias | largest error | in range | {last} |\n|---|---|---|---|---|---|---|---|---|\n");
        foreach (var held in series)
        {
            var figures = new EvidenceFigures(held.Result, Voice);
            var unit = held.Result.Series.Unit;
            string Score(double? score) => score is { } known ? Cell($"{figures.Number(known)} {unit}".TrimEnd()) : "never reached";
            var range = held.Result.PointsWithRange == 0 ? "" : $"{held.Result.PointsInRange} of {held.Result.PointsWithRange}";
            page.Append($"| {Cell(held.Case.Title)} | {held.Result.Series.Quantity} | {Voice.Member(held.Case.Source.Read).ToLowerInvariant()} "
                + $"| {held.Result.PointsWithin} of {held.Result.Points.Count} | {Score(held.Result.RootMeanSquare)} | {Score(held.Result.Bias)} | {Score(held.Result.MaxError)} | {range} | {Cell(told(held))} |\n");
        }
    }

    private static void Case(StringBuilder page, CaseResult held)
    {
        page.Append($"\n### {held.Case.Title}\n\n`{held.Case.Id}`. {SourceWords.Of(held.Case.Source)}. {Voice.Member(held.Case.Source.Read)}.");
        page.Append(held.Case.Fitted ? " Fitted: no evidence." : "").Append($"\n\nConditions: {Conditions(held.Case)}.\n");
        foreach (var result in held.Series.Where(result => result.Within is not null))
        {
            var (series, figures) = (result.Series, new EvidenceFigures(result, Voice));
            string Head(string words, string unit) => unit.Length == 0 ? words : $"{words}, {unit}";
            page.Append($"\n| {Head(series.Along.Length == 0 ? series.Quantity : figures.Along(), series.AlongUnit)} | measured {Head(series.Quantity, series.Unit)} | computed | 10 to 90 % | error | |\n|---|---|---|---|---|---|\n");
            foreach (var point in result.Points)
            {
                page.Append($"| {string.Join(" | ", figures.Row(point))} |\n");
            }

            page.Append($"\n{figures.Verdict()}{(series.Because is { } because ? $" Tolerance: {because.Replace('\n', ' ')}" : "")}\n");
        }
    }

    private static string Cell(string text) => text.Replace('\n', ' ').Replace("|", "\\|", StringComparison.Ordinal);
}

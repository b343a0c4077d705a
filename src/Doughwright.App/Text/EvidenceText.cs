using Doughwright.App.Commands;
using Doughwright.App.Json;
using Doughwright.Engine.Cases;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>Cases on a page: where each comes from, measured beside computed, how far off, and what all of them come to.</summary>
internal sealed class EvidenceText
{
    /// <summary>A longer series is shown by every second, third ... row.</summary>
    private const int MostRows = 24;

    private readonly Voice voice;
    private readonly Page page = new();

    private EvidenceText(Voice voice) => this.voice = voice;

    public static string Write(EvidenceRun run, Voice voice)
    {
        var text = new EvidenceText(voice);
        text.page.Paragraph(voice.Say("evidence-title", ("cases", run.Cases.Count), ("series", run.Series.Count())));
        foreach (var held in run.Cases)
        {
            text.WriteCase(held);
        }

        text.WriteSums(run);
        if (run.Faults.Count > 0)
        {
            // What could not be run has been told at its case.
            FindingsText.WriteSection(text.page, run.Faults, voice, quote: true);
        }

        return text.page.ToString();
    }

    private void WriteCase(CaseResult held)
    {
        var published = held.Case;
        page.Heading(voice.Say("evidence-case", ("title", published.Title), ("id", published.Id)));
        page.Paragraph(voice.Say("evidence-source", ("source", SourceWords.Of(published.Source)), ("read", voice.Member(published.Source.Read))), 2, 2);
        page.Paragraph(voice.Say("evidence-conditions", ("conditions", string.Join("; ", published.Conditions.Select(one => $"{one.Key} {one.Words}")))), 2, 2);
        if (published.Fitted)
        {
            page.Paragraph(voice.Words["evidence-fitted"], 2, 2);
        }
        else if (!published.IsEvidence)
        {
            page.Paragraph(voice.Words["evidence-formula"], 2, 2);
        }

        if (published.Note is { } note)
        {
            page.Paragraph(voice.Say("evidence-note", ("note", note.Replace('\n', ' '))), 2, 2);
        }

        foreach (var series in held.Series)
        {
            page.Gap();
            WriteSeries(series);
        }
    }

    private void WriteSeries(SeriesResult result)
    {
        var series = result.Series;
        if (result.Refusal is { } refusal)
        {
            page.Paragraph(voice.Say("evidence-not-run", ("quantity", EvidenceFigures.Capital(series.Quantity)), ("points", series.Points.Count), ("reason", FindingWords.Message(refusal, voice))), 2, 2);
            return;
        }

        var figures = new EvidenceFigures(result, voice);
        page.Paragraph(figures.Head(), 2, 2);
        var table = new Table(
            new(figures.Along(), Align.Right, series.AlongUnit),
            new(voice.Words["head.measured"], Align.Right, series.Unit),
            new(voice.Words["head.computed"], Align.Right, series.Unit),
            new(voice.Words["head.lanes"], Align.Left, series.Unit),
            new(voice.Words["head.error"], Align.Right, series.Unit),
            new("", Align.Left));
        var stride = (result.Points.Count + MostRows - 1) / MostRows;
        for (var index = 0; index < result.Points.Count; index += stride)
        {
            table.Add(figures.Row(result.Points[index]));
        }

        table.WriteTo(page, 4);
        if (stride > 1)
        {
            page.Paragraph(voice.Say("evidence-rows-shown", ("stride", stride), ("points", result.Points.Count)), 4);
        }

        page.Paragraph(figures.Verdict(), 4, 2);
        if (series.Because is { } because)
        {
            page.Paragraph(voice.Say("evidence-because", ("because", because.Replace('\n', ' '))), 4, 2);
        }
    }

    private void WriteSums(EvidenceRun run)
    {
        var sums = EvidenceSums.Of(run);
        page.Heading(voice.Words["evidence-sums"]);
        page.Paragraph(voice.Say("evidence-sum", ("within", sums.In), ("out", sums.Out), ("all", sums.In + sums.Out)), 2, 2);
        page.Paragraph(voice.Say("evidence-sum-range", ("held", sums.PointsInRange), ("all", sums.PointsWithRange)), 2, 2);
        page.Paragraph(voice.Say("evidence-sum-rest", ("fitted", sums.Fitted), ("formula", sums.Formula), ("open", sums.NotRun)), 2, 2);
        foreach (var (published, result) in run.Series.Where(held => held.Result.Within == false))
        {
            page.Paragraph(voice.Say(published.IsEvidence ? "evidence-out" : "evidence-out-not-counted", ("id", published.Id), ("quantity", result.Series.Quantity), ("verdict", new EvidenceFigures(result, voice).Short())), 2, 2);
        }
    }
}

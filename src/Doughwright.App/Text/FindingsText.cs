using Doughwright.App.Commands;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>Findings as a list: grade and place, the line of the text, what is the case, what to do.</summary>
internal static class FindingsText
{
    /// <param name="title">Null when the text was not understood far enough to have one.</param>
    /// <param name="quote">Whether the lines of the text are shown.</param>
    /// <param name="offers">Ways out that can be carried out; null where none are shown.</param>
    /// <param name="accepted">What the author has accepted, with the reasons.</param>
    public static string Write(
        string? title,
        IReadOnlyList<Finding> findings,
        Voice voice,
        bool quote,
        Offers? offers = null,
        IReadOnlyList<(Finding Finding, string Reason)>? accepted = null)
    {
        var page = new Page();
        page.Paragraph(title is null ? Count(findings, voice) : voice.Say("findings-of", ("title", title), ("count", Count(findings, voice))));
        WriteList(page, findings, voice, quote, offers);
        WriteAccepted(page, accepted ?? [], voice);

        if (offers is { All.Count: > 0 })
        {
            page.Gap();
            page.Paragraph(voice.Words["remedies-how"]);
        }

        return page.ToString();
    }

    public static void WriteSection(Page page, IReadOnlyList<Finding> findings, Voice voice, bool quote = false)
    {
        page.Heading(voice.Say("findings-head", ("count", Count(findings, voice))));
        WriteList(page, findings, voice, quote);
    }

    /// <summary>What stands, and behind it what the author has accepted.</summary>
    public static void WriteSection(Page page, Judgement findings, Voice voice)
    {
        WriteSection(page, findings.Open, voice);
        WriteAccepted(page, findings.Accepted, voice);
    }

    private static void WriteAccepted(Page page, IReadOnlyList<(Finding Finding, string Reason)> accepted, Voice voice)
    {
        foreach (var (finding, reason) in accepted)
        {
            page.Gap();
            page.Paragraph(Head(finding, voice), 2);
            page.Paragraph(FindingWords.Message(finding, voice), 4);
            page.Paragraph(voice.Say("accepted-line", ("reason", reason)), 4);
        }
    }

    private static void WriteList(Page page, IReadOnlyList<Finding> findings, Voice voice, bool quote, Offers? offers = null)
    {
        foreach (var finding in findings)
        {
            page.Gap();
            page.Paragraph(Head(finding, voice), 2);
            if (quote && finding is { Quoted: { } line, Position.IsKnown: true })
            {
                var quoted = LineQuote.Of(line, finding.Position);
                page.Line(quoted.Line);
                page.Line(quoted.Caret);
            }

            page.Paragraph(FindingWords.Message(finding, voice), 4);
            page.Paragraph(FindingWords.WayOut(finding, voice), 4);
            foreach (var (number, remedy) in offers?.For(finding) ?? [])
            {
                page.Paragraph(voice.Say("remedy-line", ("number", number), ("verb", RemedyWords.Verb(remedy, voice))), 4);
            }
        }
    }

    /// <summary>Grade and place: "Error, line 9 (home.fridgge)".</summary>
    internal static string Head(Finding finding, Voice voice)
    {
        var grade = voice.Words[(finding.Safety ? "grade-safety." : "grade.") + Voice.Kebab(finding.Grade.ToString())];
        return (finding.Position.IsKnown, finding.Place.Length > 0) switch
        {
            (true, true) => voice.Say("finding-at-line-and-place", ("grade", grade), ("line", finding.Position.Line), ("place", finding.Place)),
            (true, false) => voice.Say("finding-at-line", ("grade", grade), ("line", finding.Position.Line)),
            (false, true) => voice.Say("finding-at-place", ("grade", grade), ("place", finding.Place)),
            _ => grade,
        };
    }

    private static string Count(IReadOnlyList<Finding> findings, Voice voice)
    {
        var counts = findings.GroupBy(finding => finding.Grade).OrderByDescending(group => group.Key)
            .Select(group => voice.Say($"count.{Voice.Kebab(group.Key.ToString())}{(group.Count() == 1 ? "" : "s")}", ("count", group.Count())))
            .ToArray();
        return counts.Length == 0 ? voice.Words["count.none"] : voice.List(counts);
    }
}

using Doughwright.App.Commands;
using Doughwright.Engine.Rehearsals.Readying;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>What to weigh or pour otherwise to be ready in time: each way with when it is ready, what it moves and what it costs.</summary>
internal static class ReadyText
{
    public static string Write(ReadyAnswer answer, ReadyHours hours, Judgement findings, Voice voice)
    {
        var (page, words) = (new Page(), new ReadyWords(answer, hours, voice));
        page.Paragraph(words.Title());
        page.Gap();
        page.Paragraph(words.AsWritten());
        foreach (var way in answer.Ways)
        {
            page.Heading(voice.Member(way.Lever));
            WriteWay(page, way, words);
        }

        page.Gap();
        page.Paragraph(words.Cue());
        FindingsText.WriteSection(page, findings, voice);
        return page.ToString();
    }

    private static void WriteWay(Page page, ReadyWay way, ReadyWords words)
    {
        if (way.Obstacle is { } obstacle)
        {
            page.Paragraph(words.Refused(way, obstacle), 2);
            return;
        }

        foreach (var said in words.Goes(way).Concat(words.Comes(way)))
        {
            page.Paragraph(said, 2);
        }

        foreach (var cost in words.Costs(way))
        {
            page.Paragraph(cost, 2, 2);
        }
    }
}

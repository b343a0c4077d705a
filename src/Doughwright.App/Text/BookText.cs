using Doughwright.App.Commands;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>What came of a "book" command, as text.</summary>
internal static class BookText
{
    public static string Write(BookDone done, Voice voice)
    {
        var (page, said) = (new Page(), BookSaid.Of(done, voice));
        foreach (var paragraph in said.Paragraphs)
        {
            page.Paragraph(paragraph);
        }

        WriteFlaws(page, said);
        foreach (var papers in said.Papers)
        {
            page.Gap();
            page.Paragraph(papers.Head);
            WriteEach(page, papers.Names);
        }

        return page.ToString();
    }

    private static void WriteFlaws(Page page, BookSaid said)
    {
        if (said.WayOut is not { } wayOut)
        {
            return;
        }

        page.Gap();
        WriteEach(page, said.Flaws);
        page.Gap();
        page.Paragraph(wayOut);
    }

    private static void WriteEach(Page page, IReadOnlyList<string> all)
    {
        foreach (var each in all)
        {
            page.Paragraph(each, 2, 2);
        }
    }
}

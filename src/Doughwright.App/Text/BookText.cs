using Doughwright.App.Commands;
using Doughwright.Book.Exchange;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>What came of a "book" command, in words.</summary>
internal static class BookText
{
    private const int MostFlaws = 20;

    public static string Write(BookDone done, Voice voice)
    {
        var page = new Page();
        if (done.Flaws.Count > 0)
        {
            WriteFlaws(page, done, voice);
            return page.ToString();
        }

        page.Paragraph(voice.Say(
            done.Done ? $"book-did.{done.What}" : "book-import-stopped", ("book", done.Book), ("file", done.File ?? ""), ("aside", done.SetAside ?? "")));
        if (done.Size is { } size)
        {
            page.Paragraph(voice.Say("book-holds", ("papers", size.Papers), ("states", size.States), ("kept", size.Kept), ("photos", size.Photos)));
        }

        if (done.What == "verify")
        {
            page.Paragraph(done.Copies.Count == 0 ? voice.Words["book-copies-none"] : voice.Say("book-copies", ("count", done.Copies.Count), ("file", done.Copies[0].Path)));
        }

        WritePapers(page, done, voice);
        return page.ToString();
    }

    private static void WriteFlaws(Page page, BookDone done, Voice voice)
    {
        page.Paragraph(voice.Say("book-flawed", ("book", done.Book), ("count", done.Flaws.Count)));
        page.Gap();
        foreach (var flaw in done.Flaws.Take(MostFlaws))
        {
            page.Paragraph(voice.Say("book-flaw", ("kind", voice.Member(flaw.Kind)), ("what", flaw.What)), 2, 2);
        }

        if (done.Flaws.Count > MostFlaws)
        {
            page.Paragraph(voice.Say("book-flaws-more", ("count", done.Flaws.Count - MostFlaws)), 2);
        }

        page.Gap();
        page.Paragraph(done.LatestSound is { } copy ? voice.Say("book-restore-offer", ("file", copy.Path)) : voice.Words["book-restore-none"]);
    }

    private static void WritePapers(Page page, BookDone done, Voice voice)
    {
        foreach (var becomes in new[] { Coming.Other, Coming.New, Coming.Same })
        {
            var papers = done.Papers.Where(paper => paper.Becomes == becomes).ToArray();
            if (papers.Length == 0)
            {
                continue;
            }

            page.Gap();
            page.Paragraph(voice.Words[Head(done.Done, becomes)]);
            foreach (var paper in papers)
            {
                page.Paragraph(voice.Say(paper.As == paper.Name ? "book-paper" : "book-paper-as", ("sort", voice.Member(paper.Sort)), ("name", paper.Name), ("as", paper.As)), 2, 2);
            }
        }
    }

    private static string Head(bool done, Coming becomes) => becomes switch
    {
        Coming.Other => "book-papers-other",
        Coming.New => done ? "book-papers-laid" : "book-papers-new",
        _ => "book-papers-same",
    };
}

using Doughwright.App.Commands;
using Doughwright.Book.Exchange;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>What came of something done with the book as a whole, in words: the same on the command line and on the desk.</summary>
/// <param name="Paragraphs">What was done, and what is in the book.</param>
/// <param name="Flaws">Where it does not agree with itself, line by line.</param>
/// <param name="WayOut">What to do about them; null for a sound book.</param>
/// <param name="Papers">Of an export: lists with their heads.</param>
internal sealed record BookSaid(IReadOnlyList<string> Paragraphs, IReadOnlyList<string> Flaws, string? WayOut, IReadOnlyList<SaidPapers> Papers)
{
    private const int MostFlaws = 20;

    public static BookSaid Of(BookDone done, Voice voice) => done.Flaws.Count > 0
        ? new([voice.Say("book-flawed", ("book", done.Book), ("count", done.Flaws.Count))], FlawsOf(done, voice), WayOutOf(done, voice), [])
        : new([.. ParagraphsOf(done, voice)], [], null, PapersOf(done, voice));

    private static IEnumerable<string> ParagraphsOf(BookDone done, Voice voice)
    {
        yield return voice.Say(
            done.Done ? $"book-did.{done.What}" : "book-import-stopped", ("book", done.Book), ("file", done.File ?? ""), ("aside", done.SetAside ?? ""));
        if (done.Size is { } size)
        {
            yield return voice.Say("book-holds", ("papers", size.Papers), ("states", size.States), ("kept", size.Kept), ("photos", size.Photos));
        }

        if (done.What == BookCommand.Verify)
        {
            yield return done.Copies.Count == 0 ? voice.Words["book-copies-none"] : voice.Say("book-copies", ("count", done.Copies.Count), ("file", done.Copies[0].Path));
        }
    }

    private static string[] FlawsOf(BookDone done, Voice voice)
    {
        var told = done.Flaws.Take(MostFlaws).Select(flaw => voice.Say("book-flaw", ("kind", voice.Member(flaw.Kind)), ("what", flaw.What)));
        return done.Flaws.Count > MostFlaws ? [.. told, voice.Say("book-flaws-more", ("count", done.Flaws.Count - MostFlaws))] : [.. told];
    }

    private static string WayOutOf(BookDone done, Voice voice) =>
        done.LatestSound is { } copy ? voice.Say("book-restore-offer", ("file", copy.Path)) : voice.Words["book-restore-none"];

    private static SaidPapers[] PapersOf(BookDone done, Voice voice) =>
    [
        .. new[] { Coming.Other, Coming.New, Coming.Same }
            .Select(becomes => new SaidPapers(
                voice.Words[Head(done.Done, becomes)],
                [.. done.Papers.Where(paper => paper.Becomes == becomes).Select(paper => voice.Say(
                    paper.As == paper.Name ? "book-paper" : "book-paper-as", ("sort", voice.Member(paper.Sort)), ("name", paper.Name), ("as", paper.As)))]))
            .Where(papers => papers.Names.Count > 0),
    ];

    private static string Head(bool done, Coming becomes) => becomes switch
    {
        Coming.Other => "book-papers-other",
        Coming.New => done ? "book-papers-laid" : "book-papers-new",
        _ => "book-papers-same",
    };
}

/// <summary>Papers of an export of which the same becomes.</summary>
internal sealed record SaidPapers(string Head, IReadOnlyList<string> Names);

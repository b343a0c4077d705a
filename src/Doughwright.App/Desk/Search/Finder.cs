using Doughwright.App.Desk.Shelf;
using Doughwright.Book;
using Doughwright.Book.Papers;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Search;

/// <summary>Looks for words in everything that is written in the book: in what papers say, and in what is said of them.</summary>
internal static class Finder
{
    /// <summary>Lines that are shown of each paper.</summary>
    private const int MostLines = 3;

    private static readonly string[] TitleKeys = ["title:", "kitchen:", "ingredient:"];

    /// <summary>Papers in which every word stands somewhere, those first in whose name the words stand.</summary>
    /// <param name="words">As typed. Case, accents, the sign of degrees and spaces that do not break make no difference.</param>
    public static IReadOnlyList<FoundPaper> Find(ShelfFolder shelf, string words)
    {
        string[] wanted = [.. Folded.Of(words).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Distinct(StringComparer.Ordinal)];
        return wanted.Length == 0
            ? []
            :
            [
                .. new[] { PaperSort.Recipe, PaperSort.Kitchen, PaperSort.Note, PaperSort.Ingredient }
                    .SelectMany(sort => Find(shelf.Book, sort, wanted))
                    .OrderByDescending(found => found.InTitle),
            ];
    }

    private static FoundPaper[] Find(AuthorsBook book, PaperSort sort, string[] wanted)
    {
        var (said, beside) = (book.Said.All(sort), book.Papers.Beside(sort));
        return
        [
            .. book.Papers.Texts(sort).AsParallel().AsOrdered()
                .Select(paper => Look(sort, paper.Name, paper.Text.ReplaceLineEndings("\n"), [.. SaidOf(said.GetValueOrDefault(paper.Name)), .. beside[paper.Name]], wanted))
                .OfType<FoundPaper>(),
        ];
    }

    private static FoundPaper? Look(PaperSort sort, string name, string text, string[] beside, string[] wanted)
    {
        var folded = Folded.Of(text);
        string[] foldedBeside = [.. beside.Select(Folded.Of)];
        // Most papers need not be taken to pieces.
        if (!wanted.All(word => Stands(word, folded) || foldedBeside.Any(words => Stands(word, words))))
        {
            return null;
        }

        var form = new FormReader();
        var foldedLines = folded.Split('\n');
        string[] written = sort == PaperSort.Note ? foldedLines : [.. foldedLines.Select(form.Written)];
        string[] searched = [.. written, .. foldedBeside];
        if (!wanted.All(word => searched.Any(words => Stands(word, words))))
        {
            return null;
        }

        var lines = text.Split('\n');
        string[] shown = [.. lines, .. beside];
        string[] hits = [.. shown.Where((_, at) => wanted.Any(word => Stands(word, searched[at]))).Select(line => line.Trim().TrimStart('-', ' ')).Take(MostLines)];
        var title = TitleOf(sort, name, text, lines);
        var foldedTitle = Folded.Of(title);
        return new(sort, name, title, hits, wanted.All(word => Stands(word, foldedTitle)));
    }

    private static bool Stands(string word, string words) => words.Contains(word, StringComparison.Ordinal);

    private static string TitleOf(PaperSort sort, string name, string text, string[] lines) =>
        lines.Where(line => TitleKeys.Any(key => line.StartsWith(key, StringComparison.Ordinal)))
            .Select(line => line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim().Trim('"')).FirstOrDefault() is { Length: > 0 } own ? own
            : sort == PaperSort.Note && NoteText.Read(text).Note is { Title.Length: > 0 } note ? note.Title
            : name;

    /// <summary>How it stands, its family and its season, in the words in which an author reads them.</summary>
    private static IEnumerable<string> SaidOf(IReadOnlyDictionary<Saying, string>? said) => said is null
        ? []
        : said.Where(one => one.Key != Saying.Baked).OrderBy(one => one.Key)
            .Select(one => one.Key == Saying.Standing ? Words.Shipped.Find("standing." + one.Value) ?? one.Value : one.Value);
}

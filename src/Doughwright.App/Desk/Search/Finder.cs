using System.Text;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Desk.Search;

/// <summary>Looks for words in everything that is written in the book.</summary>
internal static class Finder
{
    /// <summary>Lines that are shown of each paper.</summary>
    private const int MostLines = 3;

    private const string TitleKey = "title:";
    private const string KitchenKey = "kitchen:";
    private const string IngredientKey = "ingredient:";

    /// <summary>Papers in which every word stands somewhere, those first in whose name the words stand.</summary>
    /// <param name="words">As typed. Case, accents of the degree sign and spaces that do not break make no difference.</param>
    public static IReadOnlyList<FoundPaper> Find(ShelfFolder shelf, string words)
    {
        string[] wanted = [.. Plain(words).Split(' ', StringSplitOptions.RemoveEmptyEntries).Distinct(StringComparer.Ordinal)];
        return wanted.Length == 0
            ? []
            :
            [
                .. new[] { PaperSort.Recipe, PaperSort.Kitchen, PaperSort.Note, PaperSort.Ingredient }
                    .SelectMany(sort => shelf.Book.Papers.Texts(sort).AsParallel().AsOrdered().Select(paper => Look(sort, paper.Name, paper.Text, wanted)))
                    .OfType<FoundPaper>()
                    .OrderByDescending(found => found.InTitle),
            ];
    }

    private static FoundPaper? Look(PaperSort sort, string name, string text, string[] wanted)
    {
        var plain = Plain(text);
        if (!wanted.All(word => plain.Contains(word, StringComparison.Ordinal)))
        {
            return null;
        }

        var lines = text.ReplaceLineEndings("\n").Split('\n');
        var title = lines.Where(line => line.StartsWith(TitleKey, StringComparison.Ordinal) || line.StartsWith(KitchenKey, StringComparison.Ordinal) || line.StartsWith(IngredientKey, StringComparison.Ordinal))
            .Select(line => line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim().Trim('"')).FirstOrDefault() is { Length: > 0 } own ? own
            : sort == PaperSort.Note && NoteText.Read(text).Note is { Title.Length: > 0 } note ? note.Title
            : name;
        var plainTitle = Plain(title);
        string[] hits = [.. lines.Where(line => wanted.Any(word => Plain(line).Contains(word, StringComparison.Ordinal))).Select(line => line.Trim().TrimStart('-', ' ')).Take(MostLines)];
        return new(sort, name, title, hits, wanted.All(word => plainTitle.Contains(word, StringComparison.Ordinal)));
    }

    /// <summary>Small letters; "28 °C", "28°C" and "28 C" are the same.</summary>
    private static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var sign in text)
        {
            if (sign is '°')
            {
                continue;
            }

            plain.Append(char.IsWhiteSpace(sign) ? ' ' : char.ToLowerInvariant(sign));
        }

        return plain.ToString();
    }
}

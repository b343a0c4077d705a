using System.Globalization;
using Doughwright.Book;
using Doughwright.Book.Papers;

namespace Doughwright.BookWriter;

/// <summary>Everything an author does to a book, as quickly as it goes and in an order that a number decides.</summary>
internal static class WriteLoad
{
    private const PaperSort Sort = PaperSort.Recipe;

    public static void Run(string path, int draw, TextWriter told)
    {
        var random = new Random(draw);
        using var book = AuthorsBook.Open(path, TimeProvider.System);
        var states = book.Papers.All(Sort).ToDictionary(paper => paper.Name, paper => paper.State, StringComparer.Ordinal);
        told.WriteLine("open");
        while (true)
        {
            Act(book, states, random, told);
        }
    }

    private static void Act(AuthorsBook book, Dictionary<string, long> states, Random random, TextWriter told)
    {
        var name = states.Count == 0 ? "" : states.Keys.Order(StringComparer.Ordinal).ElementAt(random.Next(states.Count));
        switch (states.Count == 0 ? 0 : random.Next(100))
        {
            case < 4:
                name = book.Papers.Lay(Sort, [$"p{states.Count}"], Text(random), "laid");
                var laid = book.Papers.Find(Sort, name)!;
                states[name] = laid.State;
                Tell(told, "now", name, laid.State, laid.Hash);
                break;
            case < 64:
                Now(book.Papers.Write(Sort, name, states[name], Text(random), "changed"), name, states, told);
                break;
            case < 76:
                Now(book.Papers.Undo(Sort, name, states[name]), name, states, told);
                break;
            case < 84:
                Now(book.Papers.Redo(Sort, name, states[name]), name, states, told);
                break;
            case < 92:
                var kept = book.Kept.Keep(Sort, name, states[name], "kept", "why not")!;
                Tell(told, "kept", name, kept.Id, kept.Hash);
                break;
            default:
                book.Said.Say(Sort, name, Saying.Standing, random.Next(2) == 0 ? "trying" : "right");
                Tell(told, "said", name, 0, "");
                break;
        }
    }

    private static void Now(WriteAnswer answer, string name, Dictionary<string, long> states, TextWriter told)
    {
        if (answer is WriteAnswer.Written written)
        {
            states[name] = written.State;
            Tell(told, "now", name, written.State, written.Hash);
        }
    }

    private static void Tell(TextWriter told, string what, string name, long number, string hash) =>
        told.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what} {name} {number} {hash}"));

    /// <summary>From a line to more than a page of the file.</summary>
    internal static string Text(Random random)
    {
        var letters = new char[random.Next(40, 9000)];
        for (var at = 0; at < letters.Length; at++)
        {
            letters[at] = (char)('a' + random.Next(26));
        }

        return new(letters);
    }
}

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
        var away = book.Papers.TakenAway(Sort).ToDictionary(paper => paper.Name, paper => paper.State, StringComparer.Ordinal);
        told.WriteLine("open");
        for (var turn = 0; ; turn++)
        {
            Act(book, states, away, random, string.Create(CultureInfo.InvariantCulture, $"{draw}-{turn}"), told);
        }
    }

    /// <param name="sign">Of this one thing, as a word.</param>
    private static void Act(AuthorsBook book, Dictionary<string, long> states, Dictionary<string, long> away, Random random, string sign, TextWriter told)
    {
        var name = states.Count == 0 ? "" : OneOf(states.Keys.Order(StringComparer.Ordinal), random)!;
        switch (states.Count == 0 ? 0 : random.Next(100))
        {
            case < 4:
                name = book.Papers.Lay(Sort, [$"p{states.Count + away.Count}"], Text(random), "laid");
                var laid = book.Papers.Find(Sort, name)!;
                states[name] = laid.State;
                Tell(told, "now", name, laid.State, laid.Hash);
                break;
            case < 44:
                Now(book.Papers.Write(Sort, name, states[name], Text(random), "changed"), name, states, told);
                break;
            case < 54:
                Now(book.Papers.Undo(Sort, name, states[name]), name, states, told);
                break;
            case < 62:
                Now(book.Papers.Redo(Sort, name, states[name]), name, states, told);
                break;
            case < 68:
                var kept = book.Kept.Keep(Sort, name, states[name], "kept", "why not")!;
                Tell(told, "kept", name, kept.Id, kept.Hash);
                break;
            case < 73:
                // Two things in one go: the keeping, and how the recipe stands from then on.
                var published = book.Kept.Keep(Sort, name, states[name], "published", "", published: true, "published")!;
                Tell(told, "published", name, published.Id, published.Hash);
                break;
            case < 79:
                book.Said.Say(Sort, name, Saying.Standing, random.Next(2) == 0 ? "trying" : "right");
                Tell(told, "said", name, 0, "");
                break;
            case < 86:
                Tell(told, "photo", name, 0, book.Photos.Lay(Sort, name, "image/jpeg", Photo(random), sign)!);
                break;
            case < 91 when OneOf(book.Kept.All(Sort, name).Where(one => one.Published), random) is { } given:
                book.Corrections.Add(given.Id, sign, "page");
                Tell(told, "correction", name, given.Id, sign);
                break;
            case < 94 when OneOf(book.Corrections.All(Sort, name).Where(one => one.Made is null), random) is { } waiting:
                book.Corrections.Make(waiting.Id);
                Tell(told, "made", name, waiting.Id, "");
                break;
            case < 97 when states.Count > 1:
                book.Papers.TakeAway(Sort, name);
                Move(name, states, away);
                Tell(told, "away", name, 0, "");
                break;
            case < 100 when OneOf(away.Keys.Order(StringComparer.Ordinal), random) is { } back:
                book.Papers.PutBack(Sort, back);
                Move(back, away, states);
                Tell(told, "back", back, 0, "");
                break;
        }
    }

    private static T? OneOf<T>(IEnumerable<T> all, Random random) where T : class => all.ToArray() is { Length: > 0 } some ? some[random.Next(some.Length)] : null;

    private static void Move(string name, Dictionary<string, long> from, Dictionary<string, long> to)
    {
        to[name] = from[name];
        from.Remove(name);
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

    /// <summary>It begins as a photo does, and is some pages of the file long.</summary>
    private static byte[] Photo(Random random)
    {
        var bytes = new byte[random.Next(200, 60_000)];
        random.NextBytes(bytes);
        (bytes[0], bytes[1], bytes[2]) = (0xff, 0xd8, 0xff);
        return bytes;
    }

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

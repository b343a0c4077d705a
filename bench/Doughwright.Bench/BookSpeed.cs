using System.Diagnostics;
using System.Globalization;
using Doughwright.Book;
using Doughwright.Book.Papers;
using Microsoft.Data.Sqlite;

namespace Doughwright.Bench;

/// <summary>A stored keystroke: one text of 6 kB written into a book that holds 5,000 states, beside one bare INSERT of the library in the same run, in turn.</summary>
internal static class BookSpeed
{
    private const int StatesBefore = 5000;
    private const int Keystrokes = 400;
    private const int Letters = 6000;

    public static int Run()
    {
        var folder = Directory.CreateTempSubdirectory("doughwright-book-speed-").FullName;
        try
        {
            using var book = AuthorsBook.Open(Path.Join(folder, "book.db"), TimeProvider.System);
            using var bare = Bare(Path.Join(folder, "bare.db"));
            var state = Fill(book);
            var (ours, theirs) = (new double[Keystrokes], new double[Keystrokes]);
            for (var number = 0; number < Keystrokes; number++)
            {
                var text = Text(StatesBefore + number);
                ours[number] = Milliseconds(() => state = ((WriteAnswer.Written)book.Papers.Write(PaperSort.Recipe, "rolls", state, text, "changed")).State);
                theirs[number] = Milliseconds(() => Insert(bare, text));
            }

            Array.Sort(ours);
            Array.Sort(theirs);
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"a stored keystroke, {Letters} letters, {StatesBefore} states before it, {Keystrokes} times: median {At(ours, 0.5):0.0} ms, p95 {At(ours, 0.95):0.0} ms; "
                + $"a bare INSERT in turn: median {At(theirs, 0.5):0.0} ms, p95 {At(theirs, 0.95):0.0} ms; ratio {At(ours, 0.5) / At(theirs, 0.5):0.00} and {At(ours, 0.95) / At(theirs, 0.95):0.00}"));
            return 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static long Fill(AuthorsBook book)
    {
        book.Papers.Lay(PaperSort.Recipe, ["rolls"], Text(0), "laid");
        var state = book.Papers.Find(PaperSort.Recipe, "rolls")!.State;
        for (var number = 1; number < StatesBefore; number++)
        {
            state = ((WriteAnswer.Written)book.Papers.Write(PaperSort.Recipe, "rolls", state, Text(number), "changed")).State;
        }

        return state;
    }

    /// <summary>The same safety as a book: nothing is told before it is on the disk.</summary>
    private static SqliteConnection Bare(string path)
    {
        var bare = new SqliteConnection($"Data Source={path};Pooling=False");
        bare.Open();
        foreach (var statement in new[] { "PRAGMA journal_mode = WAL", "PRAGMA synchronous = FULL", "CREATE TABLE text (id INTEGER PRIMARY KEY, text TEXT NOT NULL)" })
        {
            using var command = bare.CreateCommand();
            command.CommandText = statement;
            command.ExecuteNonQuery();
        }

        return bare;
    }

    private static void Insert(SqliteConnection bare, string text)
    {
        using var command = bare.CreateCommand();
        command.CommandText = "INSERT INTO text (text) VALUES ($text)";
        command.Parameters.AddWithValue("$text", text);
        command.ExecuteNonQuery();
    }

    private static string Text(int number)
    {
        var random = new Random(number);
        var letters = new char[Letters];
        for (var at = 0; at < letters.Length; at++)
        {
            letters[at] = (char)('a' + random.Next(26));
        }

        return new(letters);
    }

    private static double Milliseconds(Action work)
    {
        var watch = Stopwatch.StartNew();
        work();
        return watch.Elapsed.TotalMilliseconds;
    }

    private static double At(double[] sorted, double share) => sorted[(int)(share * (sorted.Length - 1))];
}

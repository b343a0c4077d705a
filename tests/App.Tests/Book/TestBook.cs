using Doughwright.Book;
using Doughwright.Book.Papers;

namespace Doughwright.App.Tests.Book;

/// <summary>A book in a folder of its own, gone with the test.</summary>
internal sealed class TestBook : IDisposable
{
    public static readonly DateTimeOffset Noon = new(2026, 11, 26, 12, 0, 0, TimeSpan.Zero);

    private readonly string folder = Directory.CreateTempSubdirectory("doughwright-book-").FullName;

    public HandClock Clock { get; } = new(Noon);

    public string Folder => folder;

    public string Path => System.IO.Path.Join(folder, "book.db");

    public string Log => Path + "-wal";

    public string In(params string[] parts) => System.IO.Path.Join([folder, .. parts]);

    public AuthorsBook Open() => AuthorsBook.Open(Path, Clock);

    public AuthorsBook OpenToRead() => AuthorsBook.OpenToRead(Path, Clock);

    /// <summary>Writes so many states of one recipe, each a text of its own.</summary>
    /// <returns>The last state.</returns>
    public static long Fill(AuthorsBook book, int states, string name = "rolls", int letters = 600)
    {
        if (book.Papers.Find(PaperSort.Recipe, name) is not { } paper)
        {
            book.Papers.Lay(PaperSort.Recipe, [name], TextOf(0, letters), "laid");
            paper = book.Papers.Find(PaperSort.Recipe, name)!;
        }

        var state = paper.State;
        for (var number = 1; number <= states; number++)
        {
            state = Assert.IsType<WriteAnswer.Written>(book.Papers.Write(PaperSort.Recipe, name, state, TextOf(number, letters), $"changed {number}")).State;
        }

        return state;
    }

    public static string TextOf(int number, int letters = 600) => $"doughwright: 1\ntitle: Rolls {number}\n{new string((char)('a' + (number % 26)), letters)}\n";

    /// <summary>Changes bytes of a file.</summary>
    public static void Spoil(string file, long at, params byte[] bytes)
    {
        using var stream = new FileStream(file, FileMode.Open, FileAccess.ReadWrite);
        stream.Position = at;
        stream.Write(bytes);
    }

    /// <summary>Copies a book in use with its log and index, as it would lie there after its program ended by force.</summary>
    public static void CopyAsItLies(string from, string to)
    {
        foreach (var part in new[] { "", "-wal", "-shm" }.Where(part => File.Exists(from + part)))
        {
            // To open and close the file in this program would let go of the library's locks on it; another program may.
            using var copy = System.Diagnostics.Process.Start("cp", [from + part, to + part]);
            copy.WaitForExit();
            Assert.Equal(0, copy.ExitCode);
        }
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);
}

using System.Text;
using Doughwright.Book;
using Doughwright.Book.Opening;
using Doughwright.Book.Papers;
using Doughwright.Engine.Recipes;

namespace Doughwright.App.Commands;

/// <summary>A text as it came from a file or from standard input.</summary>
/// <param name="Findings">What is wrong with its bytes: it is not all UTF-8.</param>
internal sealed record InputFile(string Name, string Text, IReadOnlyList<Finding> Findings)
{
    /// <summary>Notes of the book that the text lies in; null for one that lies in none.</summary>
    public BookNotes? Notes { get; init; }

    /// <summary>Far more than the reader takes, so that it can say how large a text is; an endless input stops here.</summary>
    private const int MostBytes = 32 * 1024 * 1024;

    /// <summary>Reads "FILE" or "-". Null with a fault when there is nothing to read.</summary>
    /// <param name="sort">What is looked for where the file is a text of a book.</param>
    public static InputFile? Read(string path, Stream standardInput, Faults faults, PaperSort sort = PaperSort.Recipe)
    {
        if (path == "-")
        {
            return Of("-", ReadAll(standardInput));
        }

        if (BookAddress.Read(path) is { } inBook)
        {
            return InBook(inBook, sort, faults);
        }

        try
        {
            if (Directory.Exists(path))
            {
                faults.Add("file-is-folder", ("file", path));
                return null;
            }

            using var stream = File.OpenRead(path);
            return Of(path, ReadAll(stream));
        }
        catch (Exception problem) when (problem is FileNotFoundException or DirectoryNotFoundException or ArgumentException or PathTooLongException or NotSupportedException)
        {
            var near = NearIn(path);
            faults.Add("file-missing", ("file", path), ("nearest", near is null ? "" : faults.Voice.Say("nearest", ("name", near))));
            return null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            faults.Add("file-unreadable", ("file", path));
            return null;
        }
    }

    private static InputFile? InBook(BookAddress address, PaperSort sort, Faults faults)
    {
        try
        {
            using var book = AuthorsBook.OpenToRead(address.Book, TimeProvider.System);
            if (book.Papers.Text(sort, address.Name) is { } text)
            {
                return new(BookAddress.Of(address.Book, address.Name), text, []) { Notes = BookNotes.Of(book.Papers.Texts(PaperSort.Note)) };
            }

            if (address.Parted is { } parted && book.Papers.Find(sort, parted.Name) is not null)
            {
                return InState(book, parted, sort, faults);
            }

            if (book.Papers.TakenAway(sort).FirstOrDefault(paper => paper.Name == address.Name || paper.Name == address.Parted?.Name) is { } away)
            {
                faults.Add("taken-away-in-book", ("name", away.Name), ("book", address.Book));
                return null;
            }

            faults.AddUnknown("not-in-book", address.Name, [.. book.Papers.All(sort).Select(paper => paper.Name)], ("book", address.Book));
        }
        catch (BookException problem)
        {
            BookFaults.Add(problem, faults);
        }

        return null;
    }

    /// <summary>A state that a paper of the book was in.</summary>
    private static InputFile? InState(AuthorsBook book, BookAddress address, PaperSort sort, Faults faults)
    {
        var states = book.Papers.States(sort, address.Name);
        if (address.StateNumber is { } number && states.Any(state => state.Id == number))
        {
            return new(BookAddress.Of(address.Book, address.Name, number), book.Papers.TextOf(number)!, []) { Notes = BookNotes.Of(book.Papers.Texts(PaperSort.Note)) };
        }

        faults.Add("state-not-in-book", ("given", $"@{address.State}"), ("name", address.Name), ("first", states[^1].Id), ("last", states[0].Id));
        return null;
    }

    /// <summary>Bytes as UTF-8. What is not is replaced and said, with its place, so that the rest can still be read.</summary>
    internal static InputFile Of(string name, ReadOnlySpan<byte> bytes)
    {
        var text = Encoding.UTF8.GetString(bytes);
        try
        {
            new UTF8Encoding(false, true).GetCharCount(bytes);
            return new(name, text, []);
        }
        catch (DecoderFallbackException)
        {
            return new(name, text, [NotUtf8(text)]);
        }
    }

    private static Finding NotUtf8(string text)
    {
        var at = text.IndexOf('\ufffd');
        var before = text.AsSpan(0, Math.Max(at, 0));
        return new()
        {
            Kind = "text-not-utf8",
            Grade = Grade.Error,
            NotUnderstood = true,
            Place = "",
            Position = new(before.Count('\n') + 1, before.Length - before.LastIndexOf('\n')),
        };
    }

    private static ReadOnlySpan<byte> ReadAll(Stream stream)
    {
        using var memory = new MemoryStream();
        var buffer = new byte[81920];
        for (var read = stream.Read(buffer); read > 0 && memory.Length <= MostBytes; read = stream.Read(buffer))
        {
            memory.Write(buffer, 0, read);
        }

        return memory.GetBuffer().AsSpan(0, (int)memory.Length);
    }

    /// <summary>A recipe text in the same folder whose name is nearly the one given.</summary>
    private static string? NearIn(string path)
    {
        try
        {
            var folder = Path.GetDirectoryName(path) is { Length: > 0 } named ? named : ".";
            var names = Directory.EnumerateFiles(folder, "*.yaml").Take(1000).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal);
            return Nearest.Within(Path.GetFileName(path), names) is { } near ? Path.Join(folder == "." ? "" : folder, near) : null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return null;
        }
    }
}

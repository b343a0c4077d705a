using Doughwright.App.Desk.Hosting;
using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Book;
using Doughwright.Book.Opening;

namespace Doughwright.App.Commands;

/// <summary>book backup, restore, verify, export, import: what is done with the author's book as a whole.</summary>
internal static class BookCommand
{
    public const string Backup = "backup";
    private const string Restore = "restore";
    public const string Verify = "verify";
    private const string Export = "export";
    public const string Import = "import";

    private static readonly string[] Verbs = [Backup, Restore, Verify, Export, Import];

    public static Answer Run(CommandRun run)
    {
        var (given, faults) = (run.Given, run.Given.Faults);
        var folder = given.One(run.Options.Folder) is { } named ? new DataFolder(Path.GetFullPath(named)) : DataFolder.OfUser();
        var to = given.One(run.Options.Out);
        var words = given.Files(run.Options.File);
        if (words.Count == 0 || !Verbs.Contains(words[0]))
        {
            faults.AddUnknown("book-what", words.Count == 0 ? "" : words[0], Verbs);
            return Answer.None;
        }

        var file = Named(words, faults);
        if (to is not null && words[0] is not (Backup or Export))
        {
            faults.Add("book-out-unused", ("what", words[0]));
        }
        else if (to is null && words is [Export])
        {
            faults.Add("book-out-missing", ("example", given.Example(run.Options.Out)));
        }

        if (faults.Any)
        {
            return Answer.None;
        }

        try
        {
            return Do(words[0], folder, file, to, faults) is { } done
                ? new(run.Json ? BookJson.Write(done) : BookText.Write(done, run.Voice), "", done is { Done: true, Flaws.Count: 0 } ? ExitCode.Done : ExitCode.Errors)
                : Answer.None;
        }
        catch (BookException problem)
        {
            BookFaults.Add(problem, faults);
            return Answer.None;
        }
    }

    /// <summary>The file behind the word; null when none is, with a fault where one is wanted or too many are there.</summary>
    private static string? Named(IReadOnlyList<string> words, Faults faults)
    {
        var takesOne = words[0] is Restore or Verify or Import;
        if (words.Count > 1 && words[0] is Backup or Export)
        {
            faults.Add("book-word-behind", ("what", words[0]), ("words", words.Skip(1).ToArray()), ("first", words[1]));
        }
        else if (words.Count > 2)
        {
            faults.Add("words-left-over", ("words", words.Skip(2).ToArray()));
        }

        if (words[0] == Import && words.Count < 2)
        {
            faults.Add("book-import-of-nothing");
        }

        return takesOne && words.Count > 1 ? words[1] : null;
    }

    /// <summary>Null with faults when nothing could be done.</summary>
    private static BookDone? Do(string what, DataFolder folder, string? file, string? to, Faults faults) => what switch
    {
        Backup => new(what, folder.Book) { File = AuthorsBook.BackUp(folder.Book, to, TimeProvider.System) },
        Restore => Restored(folder, file),
        Verify => Verified(file ?? folder.Book),
        Export => Exported(folder, to!),
        _ => Imported(folder, file!, faults),
    };

    private static BookDone Restored(DataFolder folder, string? file)
    {
        var back = AuthorsBook.BringBack(folder.Book, file, TimeProvider.System);
        return new(Restore, folder.Book) { File = back.From, SetAside = back.SetAside, Size = SizeOf(folder.Book) };
    }

    /// <summary>A book of any form looked through, whoever writes in it meanwhile.</summary>
    /// <exception cref="BookException">There is none, or it cannot be read at all.</exception>
    public static BookDone Verified(string book)
    {
        var flaws = AuthorsBook.Examine(book);
        return new(Verify, book)
        {
            Flaws = flaws,
            Size = flaws.Count == 0 ? SizeOf(book) : null,
            Copies = AuthorsBook.CopiesOf(book),
            LatestSound = flaws.Count == 0 ? null : AuthorsBook.LatestSoundCopy(book),
        };
    }

    private static BookDone Exported(DataFolder folder, string to)
    {
        using var book = AuthorsBook.OpenToRead(folder.Book, TimeProvider.System);
        book.Export(to);
        return new(Export, folder.Book) { File = to, Size = book.Size() };
    }

    private static BookDone? Imported(DataFolder folder, string from, Faults faults)
    {
        if (!Path.Exists(from))
        {
            faults.Add("import-missing", ("file", from));
            return null;
        }

        using var book = AuthorsBook.Open(Made(folder).Book, TimeProvider.System);
        return TakenIn(book, from, from, faults);
    }

    /// <summary>An export taken into an open book. Null with faults when it cannot be read.</summary>
    /// <param name="called">Its name as the author knows it.</param>
    /// <exception cref="BookException">The book cannot be written; nothing was changed.</exception>
    public static BookDone? TakenIn(AuthorsBook book, string from, string called, Faults faults)
    {
        var answer = book.Import(from, ImportedPhotos.Look);
        foreach (var fault in answer.Faults)
        {
            BookFaults.Add(fault, from, called, faults);
        }

        return faults.Any ? null : new(Import, book.Path) { File = called, Done = answer.Done, Papers = answer.Papers, Size = book.Size() };
    }

    private static DataFolder Made(DataFolder folder)
    {
        try
        {
            Directory.CreateDirectory(folder.Root);
            return folder;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new BookException(BookTrouble.ReadOnly, folder.Book, problem.Message, problem);
        }
    }

    private static BookSize? SizeOf(string book)
    {
        try
        {
            using var open = AuthorsBook.OpenToRead(book, TimeProvider.System);
            return open.Size();
        }
        catch (BookException problem) when (problem.Trouble == BookTrouble.Older)
        {
            // A sound book of an older form is counted when it is brought forward.
            return null;
        }
    }
}

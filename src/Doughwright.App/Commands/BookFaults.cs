using Doughwright.Book;
using Doughwright.Book.Exchange;
using Doughwright.Book.Opening;

namespace Doughwright.App.Commands;

/// <summary>Why a book could not do what was asked, in words.</summary>
internal static class BookFaults
{
    public static void Add(BookException problem, Faults faults)
    {
        var copy = problem.Trouble == BookTrouble.Damaged ? CopyOf(problem.Path) : null;
        faults.Add(
            KindOf(problem.Trouble, copy is not null), ("book", problem.Path), ("reason", problem.Message), ("copy", copy ?? ""), ("folder", Path.GetDirectoryName(problem.Path) ?? ""),
            ("most", Guard.MostFiles));
    }

    /// <summary>What keeps an export from being taken in.</summary>
    /// <param name="from">Where it lies.</param>
    /// <param name="called">Its name as the author knows it: what a browser sent lies elsewhere under another.</param>
    public static void Add(ExchangeFault fault, string from, string called, Faults faults) => faults.Add(
        fault.Kind,
        [.. fault.Arguments.Select(argument => (argument.Name, argument.Value is string file && file.StartsWith(from, StringComparison.Ordinal) ? called + file[from.Length..] : argument.Value))]);

    private static string KindOf(BookTrouble trouble, bool hasCopy) => trouble switch
    {
        BookTrouble.Missing => "book-missing",
        BookTrouble.InUse => "book-in-use",
        BookTrouble.NotABook => "book-not-a-book",
        BookTrouble.Newer => "book-newer",
        BookTrouble.Older => "book-older",
        BookTrouble.Damaged => hasCopy ? "book-damaged" : "book-damaged-without-copy",
        BookTrouble.LogDamaged => "book-log-damaged",
        BookTrouble.NoSoundCopy => "book-no-sound-copy",
        BookTrouble.Taken => "book-taken",
        BookTrouble.TooMany => "book-too-many",
        BookTrouble.Full => "book-full",
        BookTrouble.ReadOnly => "book-read-only",
        BookTrouble.Busy => "book-busy",
        _ => "book-disk",
    };

    private static string? CopyOf(string book)
    {
        try
        {
            return AuthorsBook.LatestSoundCopy(book)?.Path;
        }
        catch (BookException)
        {
            // Copies that cannot be looked at cannot be offered.
            return null;
        }
    }
}

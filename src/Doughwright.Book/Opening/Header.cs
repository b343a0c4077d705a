using System.Buffers.Binary;
using Doughwright.Book.Schema;

namespace Doughwright.Book.Opening;

/// <summary>What the first bytes of a file say of it, read before anything is made beside it.</summary>
/// <remarks>Places of the marks: the library's description of its file format, section 1.3 (the database header).</remarks>
internal static class Header
{
    private const int Length = 100;
    private const int FormAt = 60;
    private const int MarkAt = 68;

    private static ReadOnlySpan<byte> Library => "SQLite format 3\0"u8;

    /// <summary>Refuses what cannot be a book. What may be one is looked at again when it is open: the log may say more than the file.</summary>
    /// <exception cref="BookException">It is no book, or newer, or cannot be read.</exception>
    public static void Check(string path, Forms forms)
    {
        if (Directory.Exists(path))
        {
            throw new BookException(BookTrouble.NotABook, path, "");
        }

        Span<byte> bytes = stackalloc byte[Length];
        int read;
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            read = stream.ReadAtLeast(bytes, Length, throwOnEndOfStream: false);
        }
        catch (Exception problem) when (BookException.Of(problem, path) is { } told)
        {
            throw told;
        }

        // A program that ended while it made the book leaves nothing in it.
        if (read == 0)
        {
            return;
        }

        var mark = read < Length ? -1 : BinaryPrimitives.ReadInt32BigEndian(bytes[MarkAt..]);
        if (!bytes[..Library.Length].SequenceEqual(Library) || mark is not (0 or Forms.Mark))
        {
            throw new BookException(BookTrouble.NotABook, path, "");
        }

        forms.CheckForm(BinaryPrimitives.ReadInt32BigEndian(bytes[FormAt..]), path);
    }
}

using System.Diagnostics;

namespace Doughwright.Book.Opening;

/// <summary>Held by the one program that writes a book. The system lets it go when that program ends, however it ends.</summary>
internal sealed class WriterLock : IDisposable
{
    private const string Ending = ".writer";

    /// <summary>A program that opens the book to read holds it for some milliseconds when it looks at the log.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(20);

    private readonly FileStream held;

    private WriterLock(FileStream held) => this.held = held;

    /// <exception cref="BookException">Another program holds it, or the folder cannot be written.</exception>
    public static WriterLock Take(string book)
    {
        for (var waited = Stopwatch.StartNew(); ;)
        {
            try
            {
                return new(new(book + Ending, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None));
            }
            catch (IOException problem) when (SystemErrors.Of(problem) == BookTrouble.InUse && waited.Elapsed < Patience)
            {
                Thread.Sleep(Pause);
            }
            catch (Exception problem) when (BookException.Of(problem, book) is { } told)
            {
                throw told;
            }
        }
    }

    /// <returns>Null when it cannot be had at once, for whatever reason.</returns>
    public static WriterLock? TryTake(string book)
    {
        try
        {
            return new(new(book + Ending, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    public void Dispose() => held.Dispose();
}

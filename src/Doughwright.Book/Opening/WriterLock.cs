namespace Doughwright.Book.Opening;

/// <summary>Held by the one program that writes a book. The system lets it go when that program ends, however it ends.</summary>
internal sealed class WriterLock : IDisposable
{
    private const string Ending = ".writer";

    private readonly FileStream held;

    private WriterLock(FileStream held) => this.held = held;

    /// <exception cref="BookException">Another program holds it, or the folder cannot be written.</exception>
    public static WriterLock Take(string book)
    {
        try
        {
            return new(new(book + Ending, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None));
        }
        catch (UnauthorizedAccessException problem)
        {
            throw new BookException(BookTrouble.ReadOnly, book, problem.Message, problem);
        }
        catch (IOException problem) when (problem is not (DirectoryNotFoundException or PathTooLongException) && File.Exists(book + Ending))
        {
            throw new BookException(BookTrouble.InUse, book, problem.Message, problem);
        }
        catch (IOException problem)
        {
            throw new BookException(BookTrouble.ReadOnly, book, problem.Message, problem);
        }
    }

    public void Dispose() => held.Dispose();
}

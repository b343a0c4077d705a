namespace Doughwright.Book.Opening;

/// <summary>Files of a book by name.</summary>
internal static class BookPaths
{
    /// <summary>What is written and not yet in the book's own file.</summary>
    public static string Log(string book) => book + "-wal";

    /// <summary>Where in the log what stands; made anew whenever it is missing.</summary>
    public static string Index(string book) => book + "-shm";

    /// <summary>The one file that a name leads to, so that a book reached by two names has one lock.</summary>
    /// <exception cref="BookException">The name cannot be one of a file.</exception>
    public static string Real(string path)
    {
        try
        {
            var full = Path.GetFullPath(path);
            return new FileInfo(full) is { LinkTarget: not null } link ? link.ResolveLinkTarget(returnFinalTarget: true)!.FullName : full;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new BookException(BookTrouble.Missing, path, problem.Message, problem);
        }
    }
}

namespace Doughwright.App.Commands;

/// <summary>A text of a book as it is named where a file could stand: "/home/anna/doughwright/book.db:potato-rolls".</summary>
internal readonly record struct BookAddress(string Book, string Name)
{
    private const string Between = ".db:";

    public static string Of(string book, string name) => $"{book}:{name}";

    /// <summary>Null for the name of a file.</summary>
    public static BookAddress? Read(string given)
    {
        var at = given.LastIndexOf(Between, StringComparison.Ordinal);
        return at < 0 || File.Exists(given) ? null : new(given[..(at + Between.Length - 1)], given[(at + Between.Length)..]);
    }
}

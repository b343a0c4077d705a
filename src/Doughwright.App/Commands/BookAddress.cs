using System.Globalization;

namespace Doughwright.App.Commands;

/// <summary>
/// A text of a book as it is named where a file could stand: "PATH/book.db:potato-rolls", and one of its states by the number it has in
/// the book: "book.db:potato-rolls@12".
/// </summary>
/// <param name="State">Null for the state that it is in now.</param>
internal readonly record struct BookAddress(string Book, string Name, string? State = null)
{
    private const string Between = ".db:";
    private const char At = '@';

    /// <param name="state">Null for the state that it is in now.</param>
    public static string Of(string book, string name, long? state = null) => $"{book}:{(state is { } number ? StateOf(name, number) : name)}";

    /// <summary>A state of a text within its book: "potato-rolls@12".</summary>
    public static string StateOf(string name, long state) => string.Create(CultureInfo.InvariantCulture, $"{name}{At}{state}");

    /// <summary>The number of the state; null where what was typed is none.</summary>
    public long? StateNumber => long.TryParse(State, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    /// <summary>Null for the name of a file.</summary>
    public static BookAddress? Read(string given)
    {
        var at = given.LastIndexOf(Between, StringComparison.Ordinal);
        return at < 0 || File.Exists(given) ? null : new(given[..(at + Between.Length - 1)], given[(at + Between.Length)..]);
    }

    /// <summary>What stands before the last "@" as the name, and what stands behind it as the state. For names that are not in the book as they are.</summary>
    public BookAddress? Parted => State is null && Name.LastIndexOf(At) is > 0 and var at ? this with { Name = Name[..at], State = Name[(at + 1)..] } : null;
}

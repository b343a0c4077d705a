using System.Text;
using Doughwright.App.Commands;
using Doughwright.Book;
using Doughwright.Book.Papers;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The texts of one sort in the author's book.</summary>
internal sealed class BookTexts(AuthorsBook book, PaperSort sort)
{
    private static readonly Lock Turn = new();

    /// <summary>Of the file that they stand in.</summary>
    public string Path => book.Path;

    /// <summary>Names, in order.</summary>
    public IReadOnlyList<string> Names() => [.. Papers().Select(paper => paper.Name)];

    /// <summary>All of them as they are now, in the order of names.</summary>
    public IReadOnlyList<Paper> Papers() => book.Papers.All(sort);

    /// <summary>Null when there is none of this name.</summary>
    public Paper? Find(string name) => book.Papers.Find(sort, name);

    /// <summary>What a paper said when it was found, whoever writes meanwhile.</summary>
    public byte[] Read(Paper found) => Encoding.UTF8.GetBytes(book.Papers.TextOf(found.State)!);

    /// <summary>The bytes of a text; null when none has this name.</summary>
    public byte[]? Read(string name) => book.Papers.Text(sort, name) is { } text ? Encoding.UTF8.GetBytes(text) : null;

    /// <summary>What a text is called on the command line.</summary>
    public string FileOf(string name) => BookAddress.Of(book.Path, name);

    /// <summary>Lays a new text into the book; one that says exactly this already is named and not laid again.</summary>
    /// <param name="wanted">A name made by <see cref="TextNames.Of"/>.</param>
    /// <param name="did">What was done, in words.</param>
    /// <param name="grownFrom">The state that it is an offshoot of.</param>
    /// <returns>The name under which it stands now.</returns>
    /// <exception cref="IOException">It cannot be written.</exception>
    public string Lay(string wanted, string text, string did, long? grownFrom = null)
    {
        // Two forms sent at once must not both find that a text is not there yet.
        lock (Turn)
        {
            return book.Papers.Saying(sort, text) ?? book.Papers.Lay(sort, TextNames.InTurn(wanted), text, did, grownFrom);
        }
    }

    /// <summary>Writes a text down anew.</summary>
    /// <param name="from">The state that was changed: when the text is in another by now, nothing is written.</param>
    /// <param name="did">What was done, in words.</param>
    /// <exception cref="IOException">It cannot be written.</exception>
    public WriteAnswer Write(string name, long from, string text, string did) => book.Papers.Write(sort, name, from, text, did);

    /// <summary>Steps back to the state before.</summary>
    public WriteAnswer Undo(string name, long from) => book.Papers.Undo(sort, name, from);

    /// <summary>Steps forward to the state that was stepped back from.</summary>
    public WriteAnswer Redo(string name, long from) => book.Papers.Redo(sort, name, from);

    /// <summary>Takes a text off its shelf. All its states stay in the book.</summary>
    /// <returns>Whether there was one.</returns>
    public bool TakeAway(string name) => book.Papers.TakeAway(sort, name);

    /// <summary>What was taken away, in the order of names.</summary>
    public IReadOnlyList<Paper> TakenAway() => book.Papers.TakenAway(sort);

    /// <summary>Whether there is something of this name to put back.</summary>
    public bool CanPutBack(string name) => book.Papers.TakenAway(sort).Any(paper => paper.Name == name);

    /// <summary>Puts back a text that was taken away.</summary>
    /// <returns>Whether there was one.</returns>
    public bool PutBack(string name) => book.Papers.PutBack(sort, name);
}

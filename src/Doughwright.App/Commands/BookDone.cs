using Doughwright.Book;
using Doughwright.Book.Exchange;
using Doughwright.Book.Safety;

namespace Doughwright.App.Commands;

/// <summary>What came of a "book" command.</summary>
/// <param name="What">Which one.</param>
/// <param name="Book">The file it was about.</param>
internal sealed record BookDone(string What, string Book)
{
    /// <summary>Written, or taken from.</summary>
    public string? File { get; init; }

    /// <summary>What was the book before.</summary>
    public string? SetAside { get; init; }

    /// <summary>False when nothing was changed because something stands in the way.</summary>
    public bool Done { get; init; } = true;

    /// <summary>Null when the book is too damaged to count.</summary>
    public BookSize? Size { get; init; }

    public IReadOnlyList<Flaw> Flaws { get; init; } = [];

    public IReadOnlyList<ComingPaper> Papers { get; init; } = [];

    public IReadOnlyList<BookCopy> Copies { get; init; } = [];

    public BookCopy? LatestSound { get; init; }
}

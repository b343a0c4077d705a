using Doughwright.Book.Papers;

namespace Doughwright.App.Desk.Shelf;

/// <summary>One recipe of the shelf while it is being rehearsed.</summary>
internal sealed class ShelfEntry(string name, byte[] bytes, string key)
{
    public string Name => name;

    /// <summary>What the author says of it beside its text; null for nothing.</summary>
    public IReadOnlyDictionary<Saying, string>? Said { get; init; }

    public byte[] Bytes => bytes;

    /// <summary>Name of what is kept of it.</summary>
    public string Key => key;

    /// <summary>Null until it is known.</summary>
    public KeptRow? Row { get; set; }

    /// <summary>The small strip; null until it is drawn, and where there is nothing to draw.</summary>
    public string? Strip { get; set; }

    /// <summary>Whether it does not fit into its row in the measure that all strips share.</summary>
    public bool TooTall { get; set; }

    /// <summary>What the row was made from, until the strip is drawn.</summary>
    public Drawable? Drawable { get; set; }

    /// <summary>Whether a fault of ours kept it from being rehearsed.</summary>
    public bool Failed { get; set; }

    public bool IsDone => Row is not null || Failed;
}

namespace Doughwright.App.Desk.Shelf;

/// <summary>One recipe of the shelf while it is being rehearsed.</summary>
internal sealed class ShelfEntry(ShelfText text, byte[]? bytes, string? key)
{
    public string Name => text.Name;

    /// <summary>Why there is nothing to rehearse; null when there is a text.</summary>
    public TextTrouble? Trouble => text.Trouble ?? (bytes is null ? TextTrouble.Unreadable : null);

    public byte[]? Bytes => bytes;

    /// <summary>Name of what is kept of it; null without a text.</summary>
    public string? Key => key;

    /// <summary>Null until it is known.</summary>
    public KeptRow? Row { get; set; }

    /// <summary>The small strip; null until it is drawn, and where there is nothing to draw.</summary>
    public string? Strip { get; set; }

    /// <summary>What the row was made from, until the strip is drawn.</summary>
    public Drawable? Drawable { get; set; }

    /// <summary>Whether a fault of ours kept it from being rehearsed.</summary>
    public bool Failed { get; set; }

    public bool IsDone => Trouble is not null || Row is not null || Failed;
}

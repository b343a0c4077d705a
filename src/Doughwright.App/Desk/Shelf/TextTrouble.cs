namespace Doughwright.App.Desk.Shelf;

/// <summary>Why something in the folder that is named like a text cannot be read as one.</summary>
internal enum TextTrouble
{
    /// <summary>Its name cannot stand in an address.</summary>
    Name,

    /// <summary>A folder.</summary>
    Folder,

    /// <summary>A link to another place. It is not followed, so nothing outside the folder is read.</summary>
    Link,

    /// <summary>More than <see cref="TextFolder.LargestText"/>.</summary>
    TooLarge,

    /// <summary>Not all of its bytes are UTF-8.</summary>
    NotUtf8,

    /// <summary>The system does not let it be read.</summary>
    Unreadable,
}

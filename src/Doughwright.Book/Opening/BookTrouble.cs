namespace Doughwright.Book.Opening;

/// <summary>Why a book cannot be opened, read or written.</summary>
public enum BookTrouble
{
    /// <summary>There is no file of this name.</summary>
    Missing,

    /// <summary>Another program has it open to write.</summary>
    InUse,

    /// <summary>The file is no book.</summary>
    NotABook,

    /// <summary>A newer program has written it.</summary>
    Newer,

    /// <summary>An older program has written it: it must be brought forward before it can be read.</summary>
    Older,

    /// <summary>What stands in the file does not agree with itself.</summary>
    Damaged,

    /// <summary>What was written last is not in the log any more; what stands before it is sound.</summary>
    LogDamaged,

    /// <summary>No room is left on the disk.</summary>
    Full,

    /// <summary>The file or its folder cannot be written.</summary>
    ReadOnly,

    /// <summary>Something held it for longer than was waited.</summary>
    Busy,

    /// <summary>It is to be brought back, and none of its copies is sound.</summary>
    NoSoundCopy,

    /// <summary>Something else has the name that was asked for.</summary>
    Taken,

    /// <summary>An archive of it would have more files than are taken in from one.</summary>
    TooMany,

    /// <summary>The disk did not do what was asked of it.</summary>
    Disk,
}

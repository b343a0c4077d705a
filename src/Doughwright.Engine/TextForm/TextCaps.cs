namespace Doughwright.Engine.TextForm;

/// <summary>How large a text may be, looked at before it is read. A long recipe has 300 lines of 80 characters.</summary>
public static class TextCaps
{
    /// <summary>UTF-16 units in a text.</summary>
    public const int Characters = 1_048_576;

    /// <summary>UTF-16 units in one line; a paragraph of prose may be one line.</summary>
    public const int LineLength = 4_000;

    /// <summary>Levels under each other. The form needs four.</summary>
    public const int Depth = 8;

    /// <summary>UTF-16 units in a key.</summary>
    public const int KeyLength = 200;

    /// <summary>Findings listed one by one; the rest are counted.</summary>
    public const int Findings = 1_000;
}

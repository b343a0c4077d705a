namespace Doughwright.App.Desk.Opening;

/// <summary>A text that somebody gives: bytes of a file, or what was typed or pasted.</summary>
/// <param name="FileName">Name of the file; null for a text that was typed.</param>
internal sealed record OpenedText(byte[] Bytes, string? FileName)
{
    /// <summary>Forms send every new line as two signs, whatever was typed.</summary>
    public static string AsTyped(string sent) => sent.Replace("\r\n", "\n", StringComparison.Ordinal);
}

using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Opening;

/// <summary>What is wrong with bytes before they are read as a text.</summary>
internal static class ByteFaults
{
    private const byte Nothing = 0;

    /// <summary>Null when they can be read. Bytes that are not UTF-8 are said with their place by the reader.</summary>
    public static OpenFault? Of(OpenedText given, Voice voice)
    {
        var name = given.FileName ?? voice.Words["open.typed-text"];
        var bytes = given.Bytes;
        if (bytes.Length == 0)
        {
            return OpenFault.Of("open-empty", voice, ("file", name));
        }

        if (bytes.Length > TextFolder.LargestText)
        {
            return OpenFault.Of("open-too-large", voice, ("file", name), ("bytes", bytes.Length), ("most", TextFolder.LargestText));
        }

        if (bytes is [0xff, 0xfe, ..] or [0xfe, 0xff, ..])
        {
            return OpenFault.Of("open-utf16", voice, ("file", name));
        }

        var binary = Array.IndexOf(bytes, Nothing);
        return binary < 0 ? null : OpenFault.Of("open-binary", voice, ("file", name), ("line", bytes.AsSpan(0, binary).Count((byte)'\n') + 1), ("byte", binary + 1));
    }
}

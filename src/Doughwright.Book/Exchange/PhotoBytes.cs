namespace Doughwright.Book.Exchange;

/// <summary>Whether bytes begin as a photo of their kind does.</summary>
internal static class PhotoBytes
{
    public static bool AreOf(string type, ReadOnlySpan<byte> bytes) => type switch
    {
        "image/jpeg" => bytes.StartsWith((ReadOnlySpan<byte>)[0xff, 0xd8, 0xff]),
        "image/png" => bytes.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G', 0x0d, 0x0a, 0x1a, 0x0a]),
        "image/webp" => bytes.Length > 12 && bytes.StartsWith("RIFF"u8) && bytes[8..12].SequenceEqual("WEBP"u8),
        _ => false,
    };
}

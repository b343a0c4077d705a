using System.Buffers.Binary;
using System.Text;

namespace Doughwright.Publishing.Pictures.Photos;

/// <summary>
/// The parts of a photo's file, walked from its beginning to its end, and what of them is not the picture: place, time, camera, words. Nothing is decoded.
/// Sources: JPEG, ITU-T T.81, annex B; PNG, third edition, 5.3 and 11; WebP, RFC 9649, 2.
/// </summary>
internal static class PhotoParts
{
    /// <summary>What stands behind the end of a picture has no name in any of the forms.</summary>
    public const string Behind = "";

    private const byte Marker = 0xff;
    private const byte Scan = 0xda;
    private const byte End = 0xd9;
    private const byte FirstOfProgram = 0xe0;
    private const byte LastOfProgram = 0xef;
    private const byte Comment = 0xfe;

    /// <summary>How the numbers of a colour are meant, without which some pictures cannot be drawn.</summary>
    private const byte ColourOfProgram = 0xee;

    /// <summary>A JFIF head without a small picture in it.</summary>
    private const int JfifLength = 16;

    private const int PngHead = 8;
    private const int PngChunk = 12;
    private const int WebpHead = 12;
    private const int WebpChunk = 8;

    /// <summary>Chunks that draw the picture: how large it is, its colours, how they are meant, its points, its end.</summary>
    private static readonly string[] OfPng = ["IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "sBIT", "cICP"];

    private static readonly string[] OfWebp = ["VP8 ", "VP8L", "VP8X", "ALPH"];

    /// <returns>What is not the picture, each once, as its form calls it; null where the parts do not follow each other to the end of the picture.</returns>
    public static IReadOnlyList<string>? Beside(ReadOnlySpan<byte> file)
    {
        List<string> found = [];
        var isWhole = file switch
        {
            [Marker, 0xd8, ..] => Jpeg(file, found),
            [0x89, ..] => Png(file, found),
            _ => Webp(file, found),
        };
        return isWhole ? [.. found.Distinct()] : null;
    }

    private static bool Jpeg(ReadOnlySpan<byte> file, List<string> found)
    {
        for (var at = 2; at + 1 < file.Length && file[at] == Marker;)
        {
            var kind = file[at + 1];
            if (kind == Marker)
            {
                // Before a marker any number of these may stand.
                at++;
                continue;
            }

            if (kind == End)
            {
                return Ends(file[(at + 2)..], found);
            }

            if (at + 4 > file.Length || BinaryPrimitives.ReadUInt16BigEndian(file[(at + 2)..]) is var length && (length < 2 || at + 2 + length > file.Length))
            {
                return false;
            }

            Name(kind, file.Slice(at + 4, length - 2), found);
            at += 2 + length;
            at = kind == Scan ? BehindScan(file, at) : at;
        }

        return false;
    }

    /// <summary>The first marker behind the points of a picture; the end of the file when there is none.</summary>
    private static int BehindScan(ReadOnlySpan<byte> file, int at)
    {
        while (at + 1 < file.Length && !(file[at] == Marker && file[at + 1] is not (0 or Marker or (>= 0xd0 and <= 0xd7))))
        {
            at++;
        }

        return at;
    }

    private static void Name(byte kind, ReadOnlySpan<byte> body, List<string> found)
    {
        if (kind == Comment)
        {
            found.Add("COM");
        }
        else if (kind is >= FirstOfProgram and <= LastOfProgram and not ColourOfProgram && !(kind == FirstOfProgram && body.StartsWith("JFIF\0"u8) && body.Length + 2 == JfifLength))
        {
            found.Add(body.StartsWith("Exif"u8) ? "Exif" : body.StartsWith("http://ns.adobe.com/"u8) ? "XMP" : FormattableString.Invariant($"APP{kind - FirstOfProgram}"));
        }
    }

    private static bool Png(ReadOnlySpan<byte> file, List<string> found)
    {
        for (var at = PngHead; at + PngChunk <= file.Length;)
        {
            var length = BinaryPrimitives.ReadUInt32BigEndian(file[at..]);
            if (length > file.Length - at - PngChunk || NameOf(file.Slice(at + 4, 4), OfPng, found) is not { } kind)
            {
                return false;
            }

            at += PngChunk + (int)length;
            if (kind == "IEND")
            {
                return Ends(file[at..], found);
            }
        }

        return false;
    }

    private static bool Webp(ReadOnlySpan<byte> file, List<string> found)
    {
        if (file.Length < WebpHead || BinaryPrimitives.ReadUInt32LittleEndian(file[4..]) is var length && (length < 4 || length > file.Length - 8))
        {
            return false;
        }

        var end = 8 + (int)length;
        var at = WebpHead;
        while (at + WebpChunk <= end)
        {
            var size = BinaryPrimitives.ReadUInt32LittleEndian(file[(at + 4)..]);
            if (size > end - at - WebpChunk || NameOf(file.Slice(at, 4), OfWebp, found) is null)
            {
                return false;
            }

            // What has an odd length is followed by one byte more.
            at += WebpChunk + (int)size + (int)(size & 1);
        }

        return at == end && Ends(file[end..], found);
    }

    /// <summary>A chunk's name, noted when it is none of the picture's; null where it is no name.</summary>
    private static string? NameOf(ReadOnlySpan<byte> letters, string[] ofPicture, List<string> found)
    {
        var name = Encoding.Latin1.GetString(letters);
        if (!name.All(letter => char.IsAsciiLetterOrDigit(letter) || letter == ' '))
        {
            return null;
        }

        if (!ofPicture.Contains(name))
        {
            found.Add(name.TrimEnd());
        }

        return name;
    }

    private static bool Ends(ReadOnlySpan<byte> rest, List<string> found)
    {
        if (rest.Length > 0)
        {
            found.Add(Behind);
        }

        return true;
    }
}

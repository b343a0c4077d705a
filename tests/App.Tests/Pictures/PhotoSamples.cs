using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using SkiaSharp;

namespace Doughwright.App.Tests.Pictures;

/// <summary>Whole small photos, and photos with more in them than a picture.</summary>
internal static class PhotoSamples
{
    /// <summary>Left half red, right half blue; the upper left corner is green.</summary>
    public static byte[] Sample(SKEncodedImageFormat format, int width = 120, int height = 80)
    {
        using var bitmap = new SKBitmap(width, height);
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(SKColors.Red);
            canvas.DrawRect(width / 2f, 0, width / 2f, height, new SKPaint { Color = SKColors.Blue });
            canvas.DrawRect(0, 0, width / 4f, height / 4f, new SKPaint { Color = SKColors.Lime });
        }

        using var data = bitmap.Encode(format, 95);
        return data.ToArray();
    }

    /// <summary>A JPEG with an Exif block in front: orientation, and a place on earth.</summary>
    public static byte[] WithExif(byte[] jpeg, ushort orientation)
    {
        // TIFF, big-endian: one directory with two entries, the second pointing to another with the latitude letter. Source: Exif 2.3, 4.5 and 4.6.
        var tiff = new byte[8 + 2 + 24 + 4 + 2 + 12 + 4];
        "MM\0*"u8.CopyTo(tiff);
        BinaryPrimitives.WriteUInt32BigEndian(tiff.AsSpan(4), 8);
        BinaryPrimitives.WriteUInt16BigEndian(tiff.AsSpan(8), 2);
        Entry(tiff.AsSpan(10), 0x0112, 3, (uint)orientation << 16);
        Entry(tiff.AsSpan(22), 0x8825, 4, 38);
        BinaryPrimitives.WriteUInt16BigEndian(tiff.AsSpan(38), 1);
        Entry(tiff.AsSpan(40), 0x0001, 2, 0x4E000000);
        byte[] head = [.. "Exif\0\0"u8, .. tiff];
        byte[] segment = [0xff, 0xe1, (byte)((head.Length + 2) >> 8), (byte)(head.Length + 2), .. head];
        byte[] comment = [0xff, 0xfe, 0, 19, .. "at 54.1234 N here"u8];
        return [.. jpeg.AsSpan(0, 2), .. segment, .. comment, .. jpeg.AsSpan(2)];

        static void Entry(Span<byte> at, ushort tag, ushort type, uint value)
        {
            BinaryPrimitives.WriteUInt16BigEndian(at, tag);
            BinaryPrimitives.WriteUInt16BigEndian(at[2..], type);
            BinaryPrimitives.WriteUInt32BigEndian(at[4..], type == 2 ? 2u : 1u);
            BinaryPrimitives.WriteUInt32BigEndian(at[8..], value);
        }
    }

    /// <summary>A PNG of one colour, whose head says how large it is: 244 MiB decoded, some 60 kB as a file.</summary>
    public static byte[] Bomb(int side)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            var row = new byte[1 + (side * 4)];
            for (var i = 0; i < side; i++)
            {
                zlib.Write(row);
            }
        }

        var head = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(head, side);
        BinaryPrimitives.WriteInt32BigEndian(head.AsSpan(4), side);
        (head[8], head[9]) = (8, 6);
        return [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0d, 0x0a, 0x1a, 0x0a, .. Chunk("IHDR", head), .. Chunk("IDAT", packed.ToArray()), .. Chunk("IEND", [])];
    }

    public static byte[] Chunk(string kind, byte[] data)
    {
        byte[] body = [.. Encoding.ASCII.GetBytes(kind), .. data];
        var length = new byte[4];
        var check = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(length, data.Length);
        BinaryPrimitives.WriteUInt32BigEndian(check, Crc(body));
        return [.. length, .. body, .. check];
    }

    /// <summary>Source: PNG, third edition, annex D.</summary>
    private static uint Crc(byte[] bytes)
    {
        var crc = uint.MaxValue;
        foreach (var one in bytes)
        {
            crc ^= one;
            for (var bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) != 0 ? 0xEDB88320 ^ (crc >> 1) : crc >> 1;
            }
        }

        return ~crc;
    }

    /// <summary>A PNG with a chunk of its own before the end.</summary>
    public static byte[] WithChunk(byte[] png, string kind, byte[] data) => [.. png.AsSpan(0, png.Length - 12), .. Chunk(kind, data), .. png.AsSpan(png.Length - 12)];

    /// <summary>A WebP of the extended form with a chunk behind the picture. Source: RFC 9649, 2.7: bits 3 and 2 of the first byte say that Exif and XMP are there.</summary>
    public static byte[] WithPart(byte[] webp, string kind, byte[] data, int width, int height)
    {
        byte[] head = [(byte)(kind == "EXIF" ? 0x08 : 0x04), 0, 0, 0, .. Three(width - 1), .. Three(height - 1)];
        byte[] body = [.. "WEBP"u8, .. Part("VP8X", head), .. webp.AsSpan(12), .. Part(kind, data)];
        return [.. "RIFF"u8, .. Four(body.Length), .. body];
    }

    private static byte[] Part(string kind, byte[] data) => [.. Encoding.ASCII.GetBytes(kind), .. Four(data.Length), .. data, .. new byte[data.Length & 1]];

    private static byte[] Four(int number)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(bytes, number);
        return bytes;
    }

    private static byte[] Three(int number) => Four(number)[..3];
}

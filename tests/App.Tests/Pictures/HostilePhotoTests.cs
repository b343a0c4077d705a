using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using Doughwright.Publishing.Pictures.Photos;
using SkiaSharp;

namespace Doughwright.App.Tests.Pictures;

/// <summary>Photos of any origin: what is no photo is refused by its own bytes, and what is one is written anew with nothing in it but the picture.</summary>
public class HostilePhotoTests
{
    /// <summary>Left half red, right half blue; the upper left corner is green.</summary>
    private static byte[] Sample(SKEncodedImageFormat format, int width = 120, int height = 80)
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

    private static PhotoFault Refused(byte[] file)
    {
        Assert.Null(PhotoFile.Read(file, out var fault));
        return fault;
    }

    /// <summary>A JPEG with an Exif block in front: orientation, and a place on earth.</summary>
    private static byte[] WithExif(byte[] jpeg, ushort orientation)
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
    private static byte[] Bomb(int side)
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

    private static byte[] Chunk(string kind, byte[] data)
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

    [Fact]
    public void PictureThatWouldFillTheMemory_IsRefusedByItsHead()
    {
        var bomb = Bomb(8000);
        Assert.True(bomb.Length < 400_000, $"{bomb.Length}");
        var before = GC.GetTotalAllocatedBytes();
        Assert.Equal(PhotoFault.TooManyPixels, Refused(bomb));
        Assert.True(GC.GetTotalAllocatedBytes() - before < 16_000_000);
        // The same file in small is a picture, so it is the size that is refused.
        Assert.NotNull(PhotoFile.Read(Bomb(64), out _));
    }

    [Fact]
    public void OtherFiles_AreRefused_WhateverTheyAreCalled()
    {
        Assert.Equal(PhotoFault.Drawing, Refused(Encoding.UTF8.GetBytes("<svg xmlns=\"http://www.w3.org/2000/svg\"><script>alert(1)</script></svg>")));
        Assert.Equal(PhotoFault.Drawing, Refused([0xef, 0xbb, 0xbf, .. Encoding.UTF8.GetBytes("\n <?xml version=\"1.0\"?><svg/>")]));
        Assert.Equal(PhotoFault.OtherKind, Refused(Encoding.ASCII.GetBytes("GIF89a,,,,,,,,,,,,,,")));
        Assert.Equal(PhotoFault.OtherKind, Refused([]));
        Assert.Equal(PhotoFault.OtherKind, Refused([.. "%PDF-1.7"u8]));
        Assert.Equal(PhotoFault.TooLarge, Refused(new byte[PhotoFile.MostBytes + 1]));
        // A head of one kind on the body of another.
        Assert.Equal(PhotoFault.Damaged, Refused([0xff, 0xd8, 0xff, .. Sample(SKEncodedImageFormat.Png).AsSpan(3)]));
    }

    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg)]
    [InlineData(SKEncodedImageFormat.Png)]
    [InlineData(SKEncodedImageFormat.Webp)]
    public void PhotoThatEndsEarly_IsRefused(SKEncodedImageFormat format)
    {
        var whole = Sample(format, 400, 300);
        Assert.NotNull(PhotoFile.Read(whole, out _));
        Assert.Equal(PhotoFault.Damaged, Refused(whole[..(whole.Length / 2)]));
        Assert.Equal(PhotoFault.Damaged, Refused(whole[..20]));
    }

    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(2, 1, 0)]
    [InlineData(3, 1, 1)]
    [InlineData(4, 0, 1)]
    [InlineData(5, 0, 0)]
    [InlineData(6, 1, 0)]
    [InlineData(7, 1, 1)]
    [InlineData(8, 0, 1)]
    public void Orientation_IsCarriedOut(ushort orientation, int right, int bottom)
    {
        // Where the first row and column of the file lie is where its green corner must come to stand. Source: Exif 2.3, tag 0112.
        var photo = PhotoFile.Read(WithExif(Sample(SKEncodedImageFormat.Jpeg), orientation), out _)!;
        Assert.Equal(orientation >= 5 ? (80, 120) : (120, 80), (photo.Width, photo.Height));
        using var bitmap = SKBitmap.Decode(photo.Bytes);
        Assert.Equal((photo.Width, photo.Height), (bitmap.Width, bitmap.Height));
        var green = bitmap.GetPixel(right == 1 ? bitmap.Width - 6 : 5, bottom == 1 ? bitmap.Height - 6 : 5);
        Assert.True(green is { Green: > 200, Red: < 90, Blue: < 90 }, $"{green}");
        // Blue is the half away from the green corner along the file's rows.
        var blue = orientation < 5
            ? bitmap.GetPixel(right == 1 ? 5 : bitmap.Width - 6, bitmap.Height / 2)
            : bitmap.GetPixel(bitmap.Width / 2, bottom == 1 ? 5 : bitmap.Height - 6);
        Assert.True(blue is { Blue: > 200, Red: < 90 }, $"{blue}");
    }

    [Fact]
    public void PlaceAndWords_AreGone_AndNoSegmentButThePictureIsLeft()
    {
        var file = WithExif(Sample(SKEncodedImageFormat.Jpeg), 6);
        Assert.Contains("54.1234", Encoding.Latin1.GetString(file), StringComparison.Ordinal);
        var photo = PhotoFile.Read([.. file, .. "hidden behind the end"u8], out _)!.Bytes;
        var text = Encoding.Latin1.GetString(photo);
        Assert.All(new[] { "Exif", "54.1234", "hidden", "ICC_PROFILE", "http" }, word => Assert.DoesNotContain(word, text, StringComparison.Ordinal));
        // Marker by marker up to the scan: application segments other than JFIF, and comments, are none of a picture.
        for (var at = 2; photo[at + 1] != 0xda; at += 2 + ((photo[at + 2] << 8) | photo[at + 3]))
        {
            Assert.Equal(0xff, photo[at]);
            Assert.False(photo[at + 1] is (>= 0xe1 and <= 0xef) or 0xfe, $"segment {photo[at + 1]:x}");
        }
    }

    [Fact]
    public void LargePhoto_IsMadeSmaller_AndSmallOneIsNot()
    {
        var large = PhotoFile.Read(Sample(SKEncodedImageFormat.Jpeg, 5000, 3000), out _)!;
        Assert.Equal((2000, 1200), (large.Width, large.Height));
        var small = PhotoFile.Read(Sample(SKEncodedImageFormat.Png, 300, 200), out _)!;
        Assert.Equal((300, 200), (small.Width, small.Height));
    }

    [Fact]
    public void SameFile_GivesTheSameBytes() =>
        Assert.Equal(PhotoFile.Read(Sample(SKEncodedImageFormat.Webp), out _)!.Bytes, PhotoFile.Read(Sample(SKEncodedImageFormat.Webp), out _)!.Bytes);
}

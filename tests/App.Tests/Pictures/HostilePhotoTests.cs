using System.Text;
using Doughwright.Publishing.Pictures.Photos;
using SkiaSharp;

namespace Doughwright.App.Tests.Pictures;

/// <summary>Photos of any origin: what is no photo is refused by its own bytes, and what is one is written anew with nothing in it but the picture.</summary>
public class HostilePhotoTests
{
    private static PhotoFault Refused(byte[] file)
    {
        Assert.Null(PhotoFile.Read(file, out var fault));
        return fault;
    }

    [Fact]
    public void PictureThatWouldFillTheMemory_IsRefusedByItsHead()
    {
        var bomb = PhotoSamples.Bomb(8000);
        Assert.True(bomb.Length < 400_000, $"{bomb.Length}");
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(PhotoFault.TooManyPixels, Refused(bomb));
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 16_000_000);
        // The same file in small is a picture, so it is the size that is refused.
        Assert.NotNull(PhotoFile.Read(PhotoSamples.Bomb(64), out _));
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
        Assert.Equal(PhotoFault.Damaged, Refused([0xff, 0xd8, 0xff, .. PhotoSamples.Sample(SKEncodedImageFormat.Png).AsSpan(3)]));
    }

    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg)]
    [InlineData(SKEncodedImageFormat.Png)]
    [InlineData(SKEncodedImageFormat.Webp)]
    public void PhotoThatEndsEarly_IsRefused(SKEncodedImageFormat format)
    {
        var whole = PhotoSamples.Sample(format, 400, 300);
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
        var photo = PhotoFile.Read(PhotoSamples.WithExif(PhotoSamples.Sample(SKEncodedImageFormat.Jpeg), orientation), out _)!;
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
        var file = PhotoSamples.WithExif(PhotoSamples.Sample(SKEncodedImageFormat.Jpeg), 6);
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
        var large = PhotoFile.Read(PhotoSamples.Sample(SKEncodedImageFormat.Jpeg, 5000, 3000), out _)!;
        Assert.Equal((2000, 1200), (large.Width, large.Height));
        var small = PhotoFile.Read(PhotoSamples.Sample(SKEncodedImageFormat.Png, 300, 200), out _)!;
        Assert.Equal((300, 200), (small.Width, small.Height));
    }

    [Fact]
    public void SameFile_GivesTheSameBytes() =>
        Assert.Equal(PhotoFile.Read(PhotoSamples.Sample(SKEncodedImageFormat.Webp), out _)!.Bytes, PhotoFile.Read(PhotoSamples.Sample(SKEncodedImageFormat.Webp), out _)!.Bytes);
}

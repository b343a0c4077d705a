using System.Text;
using Doughwright.App.Commands;
using Doughwright.App.Tests.Pictures;
using Doughwright.Book;
using Doughwright.Book.Exchange;
using Doughwright.Book.Papers;
using Doughwright.Publishing.Pictures.Photos;
using SkiaSharp;

namespace Doughwright.App.Tests.Book;

/// <summary>
/// Photos of an export that agrees with itself: a whole picture comes in, and one that would fill the memory, ends early or carries more than the picture keeps the
/// export out, with all that is wrong told at once.
/// </summary>
public sealed class ImportedPhotoTests : IDisposable
{
    private const string Place = "at 54.1234 N here";

    private readonly TestBook book = new();

    public void Dispose() => book.Dispose();

    private static byte[] Jpeg => PhotoSamples.Sample(SKEncodedImageFormat.Jpeg);

    private static byte[] Png => PhotoSamples.Sample(SKEncodedImageFormat.Png);

    private static byte[] Webp => PhotoSamples.Sample(SKEncodedImageFormat.Webp);

    [Fact]
    public void WholePhotos_OfEveryKind_ComeIn()
    {
        var (answer, hashes) = Imported(("image/jpeg", Jpeg), ("image/png", Png), ("image/webp", Webp), ("image/jpeg", RichBook.Photo));
        Assert.Empty(answer.Faults);
        Assert.True(answer.Done);
        using var open = book.OpenToRead();
        Assert.Equal(4, hashes.Distinct().Count());
        Assert.All(hashes, hash => Assert.Equal(hash, open.Photos.Find(hash)!.Hash));
    }

    /// <summary>What the sheet takes in and writes anew goes out and comes back, from every kind and of every shape.</summary>
    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg, 5000, 3000)]
    [InlineData(SKEncodedImageFormat.Png, 1, 1)]
    [InlineData(SKEncodedImageFormat.Webp, 2001, 7)]
    public void WhatTheSheetWrites_ComesIn(SKEncodedImageFormat format, int width, int height) =>
        Assert.Empty(ImportedPhotos.Look("p", PhotoFile.Read(PhotoSamples.Sample(format, width, height), out _)!.Bytes));

    [Fact]
    public void MoreThanThePicture_InAJpeg_IsNamed()
    {
        Assert.Equal(["Exif", "COM"], PhotoParts.Beside(PhotoSamples.WithExif(Jpeg, 6)));
        Assert.Equal(["XMP"], PhotoParts.Beside(Segment(Jpeg, 0xe1, "http://ns.adobe.com/xap/1.0/\0<x/>")));
        Assert.Equal(["APP13"], PhotoParts.Beside(Segment(Jpeg, 0xed, "Photoshop 3.0\0")));
        // A small picture of what was cut away.
        Assert.Equal(["APP0"], PhotoParts.Beside(Segment(Jpeg, 0xe0, "JFXX\0\u0010")));
        // Behind the points, where the head is long past.
        Assert.Equal(["Exif"], PhotoParts.Beside([.. Jpeg[..^2], 0xff, 0xff, 0xe1, 0, 8, .. "Exif\0\0"u8, 0xff, 0xd9]));
        Assert.Empty(PhotoParts.Beside(Segment(Jpeg, 0xee, "Adobe\0d\0\0\0\0\u0001"))!);
    }

    [Fact]
    public void MoreThanThePicture_InAPngOrWebp_IsNamed()
    {
        foreach (var kind in new[] { "eXIf", "tEXt", "zTXt", "iTXt", "tIME", "iCCP", "acTL", "prIv" })
        {
            Assert.Equal([kind], PhotoParts.Beside(PhotoSamples.WithChunk(Png, kind, Encoding.Latin1.GetBytes(Place))));
        }

        Assert.Equal(["EXIF"], PhotoParts.Beside(PhotoSamples.WithPart(Webp, "EXIF", Encoding.Latin1.GetBytes(Place), 120, 80)));
        Assert.Equal(["XMP"], PhotoParts.Beside(PhotoSamples.WithPart(Webp, "XMP ", Encoding.Latin1.GetBytes(Place), 120, 80)));
    }

    [Fact]
    public void WhatStandsBehindAPicture_IsSeen() => Assert.All(
        new[] { Jpeg, Png, Webp },
        photo => Assert.Equal([PhotoParts.Behind], PhotoParts.Beside([.. photo, .. "hidden"u8])));

    /// <summary>At every length, whatever the form; and nothing is thrown.</summary>
    [Fact]
    public void PhotoCutAtAnyPlace_IsNoWholeOne() => Assert.All(
        new[] { Jpeg, Png, Webp },
        photo => Assert.All(
            Enumerable.Range(4, photo.Length - 4),
            length => Assert.Null(PhotoParts.Beside(photo.AsSpan(0, length)))));

    /// <summary>Lengths and names of parts may say anything.</summary>
    [Fact]
    public void SpoiltPhotos_ThrowNothing()
    {
        var random = new Random(11);
        var told = 0;
        foreach (var photo in new[] { Jpeg, Png, Webp, PhotoSamples.WithExif(Jpeg, 6), PhotoSamples.WithPart(Webp, "EXIF", [1, 2, 3], 120, 80) })
        {
            for (var round = 0; round < 2000; round++)
            {
                byte[] spoilt = [.. photo];
                for (var change = 0; change < 4; change++)
                {
                    // The heads of parts stand mostly at the beginning.
                    spoilt[random.Next(2, random.Next(2) == 0 ? 40 : spoilt.Length)] = (byte)(random.Next(3) == 0 ? 0xff : random.Next(256));
                }

                told += PhotoParts.Beside(spoilt) is { Count: 0 } ? 0 : 1;
            }
        }

        Assert.InRange(told, 5000, 9999);
    }

    /// <summary>The parts follow each other to the end, and the points of the picture do not say what they should.</summary>
    [Fact]
    public void PhotoWhosePointsAreSpoilt_IsNoWholeOne()
    {
        var spoilt = Png;
        spoilt[spoilt.Length / 2] ^= 0xff;
        Assert.Empty(PhotoParts.Beside(spoilt)!);
        Assert.Equal(["import-photo-broken"], ImportedPhotos.Look("p", spoilt).Select(fault => fault.Kind));
    }

    [Fact]
    public void ManyPixels_AreRefusedByTheHead()
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        var fault = Assert.Single(ImportedPhotos.Look("photos/large.png", PhotoSamples.Bomb(8000)));
        Assert.Equal("import-photo-pixels", fault.Kind);
        Assert.Equal([("name", "photos/large.png"), ("width", 8000), ("height", 8000), ("most", 50)], fault.Arguments);
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 16_000_000);
    }

    [Fact]
    public void AllThatIsWrong_IsToldAtOnce_AndNothingComesIn()
    {
        // What packs well would be refused as an archive.
        var noise = new byte[PhotoFile.MostBytes];
        new Random(7).NextBytes(noise);
        var (answer, _) = Imported(
            ("image/jpeg", PhotoSamples.WithExif(Jpeg, 1)),
            ("image/png", PhotoSamples.Bomb(8000)),
            ("image/png", PhotoSamples.WithChunk(PhotoSamples.Bomb(7500), "eXIf", [1])),
            ("image/webp", Webp[..^9]),
            ("image/jpeg", [.. Jpeg, .. noise]),
            ("image/jpeg", Jpeg));
        Assert.False(answer.Done);
        Assert.Equal(
            ["import-photo-behind", "import-photo-beside", "import-photo-beside", "import-photo-broken", "import-photo-large", "import-photo-pixels", "import-photo-pixels"],
            answer.Faults.Select(fault => fault.Kind).Order(StringComparer.Ordinal));
        using var open = book.OpenToRead();
        Assert.Equal(0, open.Size().Papers);
        Assert.Equal(0, open.Size().Photos);
    }

    [Fact]
    public void CommandLine_SaysWhichPhoto_WhatItCarries_AndWhatToDo()
    {
        var hash = Exported(("image/jpeg", PhotoSamples.WithExif(Jpeg, 6)))[0];
        var run = Run.Of("book", "import", book.In("out.zip"), "--folder", book.In("new"));
        var said = string.Join(' ', run.Messages.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains($"photos/{hash}.jpg holds more than the picture: Exif and COM.", said, StringComparison.Ordinal);
        Assert.Contains("add the photo on the sheet of the recipe", said, StringComparison.Ordinal);
        Assert.DoesNotContain('{', said);
    }

    private (ImportAnswer Answer, string[] Hashes) Imported(params (string Type, byte[] Bytes)[] photos)
    {
        var hashes = Exported(photos);
        using var open = book.Open();
        return (open.Import(book.In("out.zip"), ImportedPhotos.Look), hashes);
    }

    /// <summary>An export that agrees with itself: the store looks no further than the beginning of a photo.</summary>
    private string[] Exported(params (string Type, byte[] Bytes)[] photos)
    {
        using var source = AuthorsBook.Open(book.In("source.db"), book.Clock);
        TestBook.Fill(source, 1);
        string[] hashes = [.. photos.Select(photo => source.Photos.Lay(PaperSort.Recipe, "rolls", photo.Type, photo.Bytes, "the crumb")!)];
        source.Export(book.In("out.zip"));
        return hashes;
    }

    private static byte[] Segment(byte[] jpeg, byte kind, string body)
    {
        var bytes = Encoding.Latin1.GetBytes(body);
        return [.. jpeg[..2], 0xff, kind, (byte)((bytes.Length + 2) >> 8), (byte)(bytes.Length + 2), .. bytes, .. jpeg[2..]];
    }
}

using SkiaSharp;

namespace Doughwright.Publishing.Pictures.Photos;

/// <summary>A photo written anew: upright, of a size for a page, with nothing in it but the picture.</summary>
/// <param name="Bytes">A JPEG without metadata.</param>
internal sealed record PhotoFile(byte[] Bytes, int Width, int Height)
{
    public const string Type = "image/jpeg";

    /// <summary>Bytes of the largest file that is looked at.</summary>
    public const int MostBytes = 24 * 1024 * 1024;

    /// <summary>Pixels of the largest picture that is decoded: 200 MB of memory. A larger one may say in 60 kB that it is.</summary>
    public const long MostPixels = 50_000_000;

    /// <summary>The longer side of a photo in the book.</summary>
    public const int LongSide = 2000;

    private const int Quality = 84;

    /// <summary>Takes a file of any origin. What it is is read from its own bytes, never from its name.</summary>
    /// <param name="longest">Pixels of the longer side, at most.</param>
    /// <returns>Null with a reason when it is not taken.</returns>
    public static PhotoFile? Read(byte[] file, out PhotoFault fault, int longest = LongSide)
    {
        var (looked, photo) = Opened(file, codec => Decoded(codec, longest) is { } picture ? Upright(picture, codec.EncodedOrigin, longest) : null);
        fault = looked.Fault.GetValueOrDefault();
        return photo;
    }

    /// <summary>Looks whether a file would be taken: it is decoded to its end, as small as its form allows, and nothing is made of it.</summary>
    public static PhotoLooked Look(byte[] file) => Opened(file, codec =>
    {
        using var picture = Decoded(codec, 1);
        return picture is null ? null : codec;
    }).Looked;

    /// <param name="make">What is made of it; null when it cannot be read to its end.</param>
    private static (PhotoLooked Looked, T? Made) Opened<T>(byte[] file, Func<SKCodec, T?> make) where T : class
    {
        if (file.Length > MostBytes)
        {
            return (new(PhotoFault.TooLarge), null);
        }

        if (KindOf(file) is not { } kind)
        {
            return (new(IsMarkup(file) ? PhotoFault.Drawing : PhotoFault.OtherKind), null);
        }

        using var data = SKData.CreateCopy(file);
        using var codec = SKCodec.Create(data);
        if (codec is null || codec.EncodedFormat != kind || codec.Info.Width < 1 || codec.Info.Height < 1)
        {
            return (new(PhotoFault.Damaged), null);
        }

        var (width, height) = (codec.Info.Width, codec.Info.Height);
        // The head alone says how large it is; nothing is decoded before this.
        if ((long)width * height > MostPixels)
        {
            return (new(PhotoFault.TooManyPixels, width, height), null);
        }

        var made = make(codec);
        return (new(made is null ? PhotoFault.Damaged : null, width, height), made);
    }

    /// <summary>Null when the file ends early or cannot be read.</summary>
    private static SKBitmap? Decoded(SKCodec codec, int longest)
    {
        var whole = codec.Info;
        var scale = Math.Min(1f, (float)longest / Math.Max(whole.Width, whole.Height));
        // A JPEG is decoded at an eighth, a quarter or half of its size where that is enough.
        var size = codec.GetScaledDimensions(scale);
        if (Math.Max(size.Width, size.Height) < Math.Min(longest, Math.Max(whole.Width, whole.Height)))
        {
            size = new(whole.Width, whole.Height);
        }

        var bitmap = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul, SKColorSpace.CreateSrgb()));
        if (codec.GetPixels(bitmap.Info, bitmap.GetPixels()) == SKCodecResult.Success)
        {
            return bitmap;
        }

        bitmap.Dispose();
        return null;
    }

    private static PhotoFile Upright(SKBitmap picture, SKEncodedOrigin origin, int longest)
    {
        using (picture)
        {
            var lies = origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;
            var scale = Math.Min(1.0, (double)longest / Math.Max(picture.Width, picture.Height));
            var (wide, high) = (Math.Max(1, (int)Math.Round(picture.Width * scale)), Math.Max(1, (int)Math.Round(picture.Height * scale)));
            var (width, height) = lies ? (high, wide) : (wide, high);
            // Without a colour space nothing about colour is written into the file: what has none is taken for sRGB, which it is.
            using var surface = SKSurface.Create(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Premul));
            var canvas = surface.Canvas;
            canvas.Clear(SKColors.White);
            canvas.Concat(Turn(origin, width, height));
            using var pixels = new SKPixmap(new SKImageInfo(picture.Width, picture.Height, SKColorType.Rgba8888, SKAlphaType.Premul), picture.GetPixels(), picture.RowBytes);
            using var image = SKImage.FromPixels(pixels);
            canvas.DrawImage(image, new SKRect(0, 0, wide, high), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
            using var upright = surface.Snapshot();
            using var written = upright.Encode(SKEncodedImageFormat.Jpeg, Quality);
            return new(written.ToArray(), width, height);
        }
    }

    /// <summary>
    /// How a picture is turned so that its top is up, by where its first row and first column lie. Source: Exif 2.3 (CIPA DC-008), tag 0112: 1 top left, 2 top right, 3 bottom
    /// right, 4 bottom left, 5 left top, 6 right top, 7 right bottom, 8 left bottom.
    /// </summary>
    private static SKMatrix Turn(SKEncodedOrigin origin, float width, float height) => origin switch
    {
        SKEncodedOrigin.TopRight => new(-1, 0, width, 0, 1, 0, 0, 0, 1),
        SKEncodedOrigin.BottomRight => new(-1, 0, width, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.BottomLeft => new(1, 0, 0, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.LeftTop => new(0, 1, 0, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightTop => new(0, -1, width, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightBottom => new(0, -1, width, -1, 0, height, 0, 0, 1),
        SKEncodedOrigin.LeftBottom => new(0, 1, 0, -1, 0, height, 0, 0, 1),
        _ => SKMatrix.Identity,
    };

    private static SKEncodedImageFormat? KindOf(ReadOnlySpan<byte> file) =>
        file.StartsWith((ReadOnlySpan<byte>)[0xff, 0xd8, 0xff]) ? SKEncodedImageFormat.Jpeg
        : file.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G', 0x0d, 0x0a, 0x1a, 0x0a]) ? SKEncodedImageFormat.Png
        : file.Length > 12 && file.StartsWith("RIFF"u8) && file[8..12].SequenceEqual("WEBP"u8) ? SKEncodedImageFormat.Webp
        : null;

    private static bool IsMarkup(ReadOnlySpan<byte> file)
    {
        var text = file.StartsWith((ReadOnlySpan<byte>)[0xef, 0xbb, 0xbf]) ? file[3..] : file;
        return text.TrimStart(" \t\r\n"u8).StartsWith("<"u8);
    }
}

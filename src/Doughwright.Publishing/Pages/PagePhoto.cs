using System.Globalization;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pages.Markup;
using Doughwright.Publishing.Pictures.Photos;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages;

/// <summary>A photo in a page: within the page itself, so that nothing is loaded.</summary>
/// <param name="Made">Null where the book that holds it is not at hand.</param>
/// <param name="Words">What is to be seen on it.</param>
internal sealed record PagePhoto(PhotoFile? Made, string Words)
{
    /// <summary>Pixels of the longer side: a page is read on a phone, and printed at the width of a hand.</summary>
    private const int LongSide = 1000;

    /// <param name="find">The bytes of a photo by its name; null where there is none.</param>
    public static IReadOnlyList<PagePhoto> All(IReadOnlyList<Photo> photos, Func<string, byte[]?> find) =>
        [.. photos.Select(photo => new PagePhoto(find(photo.Name) is { } bytes ? PhotoFile.Read(bytes, out _, LongSide) : null, photo.Words))];

    public static void Write(Html page, IReadOnlyList<PagePhoto> photos, Voice voice)
    {
        foreach (var photo in photos)
        {
            if (photo.Made is not { } made)
            {
                page.Author("p", voice.Say("photo.elsewhere", ("words", photo.Words)), "note");
                continue;
            }

            using (page.In("figure", "photo"))
            {
                page.Put(
                    "img", "", null, ("src", $"data:{PhotoFile.Type};base64,{Convert.ToBase64String(made.Bytes)}"), ("alt", photo.Words),
                    ("width", made.Width.ToString(CultureInfo.InvariantCulture)), ("height", made.Height.ToString(CultureInfo.InvariantCulture)));
            }
        }
    }
}

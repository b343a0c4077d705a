using Doughwright.Book.Exchange;
using Doughwright.Publishing.Pictures.Photos;

namespace Doughwright.App.Commands;

/// <summary>
/// Looks at the photos of an export as at those that are laid in on the sheet. Those are written anew, and these cannot be: texts name a photo by its bytes, and
/// what was written once says the same for ever. So one that is more than a picture keeps the export out, and is named.
/// </summary>
internal static class ImportedPhotos
{
    private const int Million = 1_000_000;
    private const int Megabyte = 1024 * 1024;

    public static IReadOnlyList<ExchangeFault> Look(string name, byte[] bytes)
    {
        List<ExchangeFault> faults = [];
        var looked = PhotoFile.Look(bytes);
        var beside = PhotoParts.Beside(bytes);
        if (looked.Fault is { } fault)
        {
            faults.Add(Of(fault, looked, name, bytes.Length));
        }
        else if (beside is null)
        {
            faults.Add(Of(PhotoFault.Damaged, looked, name, bytes.Length));
        }

        string[] parts = [.. beside?.Where(part => part != PhotoParts.Behind) ?? []];
        if (parts.Length > 0)
        {
            faults.Add(new("import-photo-beside", ("name", name), ("parts", parts)));
        }

        if (beside?.Contains(PhotoParts.Behind) == true)
        {
            faults.Add(new("import-photo-behind", ("name", name)));
        }

        return faults;
    }

    private static ExchangeFault Of(PhotoFault fault, PhotoLooked looked, string name, int bytes) => fault switch
    {
        PhotoFault.TooLarge => new("import-photo-large", ("name", name), ("megabytes", (bytes + Megabyte - 1) / Megabyte), ("most", PhotoFile.MostBytes / Megabyte)),
        PhotoFault.TooManyPixels => new(
            "import-photo-pixels", ("name", name), ("width", looked.Width), ("height", looked.Height), ("most", (int)(PhotoFile.MostPixels / Million))),
        _ => new("import-photo-broken", ("name", name)),
    };
}

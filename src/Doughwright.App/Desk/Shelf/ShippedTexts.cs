using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>Lays the texts that come with the program into a folder that is not there yet: all of them or none.</summary>
internal static class ShippedTexts
{
    private const string Unfinished = ".unfinished";

    /// <exception cref="IOException">The folder cannot be made.</exception>
    public static void Fill(string into, string from)
    {
        if (Directory.Exists(into))
        {
            return;
        }

        // Each desk that is opened makes its own beside it, and one of them becomes the folder: two at once do not disturb each other, and one
        // that is ended in between leaves nothing that looks finished.
        var beside = $"{into}.{Path.GetRandomFileName()}{Unfinished}";
        try
        {
            Directory.CreateDirectory(beside);
            foreach (var name in EmbeddedFile.Under(typeof(ShippedTexts).Assembly, from))
            {
                File.WriteAllBytes(Path.Join(beside, name[from.Length..]), EmbeddedFile.Bytes(typeof(ShippedTexts).Assembly, name));
            }

            Directory.Move(beside, into);
        }
        catch (IOException) when (Directory.Exists(into))
        {
            // Another desk was first.
            return;
        }
        finally
        {
            if (Directory.Exists(beside))
            {
                Directory.Delete(beside, recursive: true);
            }
        }
    }
}

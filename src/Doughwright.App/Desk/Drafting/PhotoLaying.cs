using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.Editing;
using Doughwright.Publishing.Pictures.Photos;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components.Forms;

namespace Doughwright.App.Desk.Drafting;

/// <summary>Lays a photo into the book and names it in the text: first the photo, so that a text never names what is not there.</summary>
internal sealed class PhotoLaying(Manuscript manuscript, ShelfFolder shelf, Voice voice)
{
    /// <param name="field">Where it is said why not, if not.</param>
    /// <param name="step">Id of the step; null for the recipe.</param>
    /// <param name="words">What is to be seen on it.</param>
    /// <returns>Whether it is laid.</returns>
    public async Task<bool> Lay(string field, string? step, IBrowserFile? file, string words)
    {
        if (file is null || string.IsNullOrWhiteSpace(words))
        {
            manuscript.Refuse(field, words, voice.Words[file is null ? "photo.no-file" : "photo.no-words"]);
            return false;
        }

        if (file.Size > PhotoFile.MostBytes)
        {
            manuscript.Refuse(field, words, Said(PhotoFault.TooLarge));
            return false;
        }

        using var bytes = new MemoryStream();
        await using (var stream = file.OpenReadStream(PhotoFile.MostBytes))
        {
            await stream.CopyToAsync(bytes);
        }

        return await Lay(field, step, bytes.ToArray(), words);
    }

    public async Task<bool> Lay(string field, string? step, byte[] bytes, string words)
    {
        var fault = default(PhotoFault);
        // It takes a moment, and the page answers meanwhile.
        if (await Task.Run(() => PhotoFile.Read(bytes, out fault)) is not { } photo)
        {
            manuscript.Refuse(field, words, Said(fault));
            return false;
        }

        try
        {
            return shelf.Book.Photos.Lay(PaperSort.Recipe, manuscript.File.Name, PhotoFile.Type, photo.Bytes, words) is { } hash
                ? manuscript.Change(field, words, recipe => PhotoEdits.Lay(recipe, step, hash, words))
                : manuscript.Change(field, words, recipe => PhotoEdits.Lay(recipe, step, "", words));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            manuscript.Refuse(field, words, voice.Say("write.not-written", ("reason", problem.Message)));
            return false;
        }
    }

    private string Said(PhotoFault fault) => voice.Say(
        "photo.fault." + Voice.Kebab(fault.ToString()), ("megabytes", PhotoFile.MostBytes / (1024 * 1024)), ("pixels", (int)(PhotoFile.MostPixels / 1_000_000)));
}

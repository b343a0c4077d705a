using System.Globalization;
using System.Text;
using Doughwright.App.Desk.Shelf;

namespace Doughwright.App.Desk.Mending;

/// <summary>
/// The texts of a recipe as they were before the desk changed them. They lie in a folder of their own beside the recipes, where nobody reads them as
/// recipes, and none is ever deleted.
/// </summary>
/// <param name="folder">Where the recipes lie.</param>
/// <param name="name">Name of the recipe's file.</param>
internal sealed class EarlierTexts(TextFolder folder, string name)
{
    private const string Room = "earlier";

    /// <summary>Beside each text: what was done to it.</summary>
    private const string Note = ".then.txt";

    private const string Stamps = "yyyyMMdd'T'HHmmss'Z'";
    private const string Did = "did";
    private const string Back = "back";

    public string Path => System.IO.Path.Join(folder.Path, Room, name);

    /// <summary>Keeps a text.</summary>
    /// <returns>The name it is kept by: when, and which of that second.</returns>
    /// <exception cref="IOException">It cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">Like it.</exception>
    public string Keep(byte[] bytes, Change change, DateTimeOffset now)
    {
        Directory.CreateDirectory(Path);
        var second = now.UtcDateTime.ToString(Stamps, CultureInfo.InvariantCulture);
        var stamp = TextNames.InTurn(second).First(free => !System.IO.Path.Exists(FileOf(free)) && !System.IO.Path.Exists(NoteOf(free)));
        LaidText.Write(FileOf(stamp), bytes);
        LaidText.Write(NoteOf(stamp), Encoding.UTF8.GetBytes($"{(change.IsBack ? Back : Did)}\n{change.After}\n{OneLine(change.Verb)}\n"));
        return stamp;
    }

    /// <summary>A text that is kept, and what was done to it; null when there is none of this name. No name leads out of the folder.</summary>
    public (byte[] Bytes, Change Change)? Find(string stamp)
    {
        if (!stamp.All(sign => char.IsAsciiDigit(sign) || sign is 'T' or 'Z' or '-'))
        {
            return null;
        }

        try
        {
            return File.ReadAllLines(NoteOf(stamp)) is [Did or Back, { } after, { } verb, ..] lines
                ? (File.ReadAllBytes(FileOf(stamp)), new(verb, lines[0] == Back, after))
                : null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private string FileOf(string stamp) => System.IO.Path.Join(Path, stamp + TextNames.Ending);

    private string NoteOf(string stamp) => System.IO.Path.Join(Path, stamp + Note);

    private static string OneLine(string verb) => string.Concat(verb.Select(sign => char.IsControl(sign) ? ' ' : sign));
}

/// <summary>What the desk did to a text.</summary>
/// <param name="Verb">In words: "Add masher to the tools".</param>
/// <param name="IsBack">Whether that was taken back instead.</param>
/// <param name="After">Hash of the text that came of it.</param>
internal sealed record Change(string Verb, bool IsBack, string After);

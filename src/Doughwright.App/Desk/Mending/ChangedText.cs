using System.Text;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Desk.Mending;

/// <summary>Writes a changed text over the one it came of, which is kept.</summary>
internal static class ChangedText
{
    private static readonly Lock Turn = new();

    /// <param name="shown">Hash of the text that the change was made from.</param>
    /// <param name="fresh">The changed text.</param>
    /// <returns>Name under which the earlier text is kept; null when another text lies there by now, and then nothing is written.</returns>
    /// <exception cref="IOException">It cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">Like it.</exception>
    public static string? Write(TextFolder folder, string name, string shown, string fresh, string verb, bool isBack, DateTimeOffset now)
    {
        // Two forms sent at once must not both find the text that they were made from.
        lock (Turn)
        {
            if (folder.Read(name) is not { } there || InputFile.Of(name, there) is not { Findings.Count: 0 } file || StateId.OfText(file.Text) != shown)
            {
                return null;
            }

            var stamp = new EarlierTexts(folder, name).Keep(there, new(verb, isBack, StateId.OfText(fresh)), now);
            LaidText.Replace(folder, name, Encoding.UTF8.GetBytes(fresh));
            return stamp;
        }
    }
}

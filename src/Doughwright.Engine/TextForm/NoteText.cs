using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Notes;

namespace Doughwright.Engine.TextForm;

/// <summary>
/// Reads notes: "# " and the title on the first line, then paragraphs parted by blank lines. "[picture: rise]" in a paragraph of its own is a picture of the
/// recipe. There is no other markup; whatever looks like some is text.
/// </summary>
public static class NoteText
{
    /// <summary>UTF-16 units of a note: some ten printed pages.</summary>
    public const int Characters = 32_768;

    /// <summary>UTF-16 units of a title.</summary>
    public const int LongestTitle = 120;

    /// <summary>Pictures in one note; each is drawn anew wherever the note is shown.</summary>
    public const int MostPictures = 4;

    internal const string TitleMark = "#";
    internal const string PictureMark = "picture:";

    /// <summary>Reads a text. Never throws for what a person wrote: all faults are findings, all at once.</summary>
    public static NoteReading Read(string text)
    {
        // A note longer than this is not looked at line by line.
        if (text.Length > Characters)
        {
            var refused = SourceText.Of("").Log;
            refused.Fault(NoteFaults.TooLong, "", new(1, 1), ("characters", text.Length), ("most", Characters));
            return new(null, refused.Findings);
        }

        var (lines, log) = SourceText.Of(text);
        var all = lines.Select(line => (line.Number, Text: line.Text.Trim())).ToList();
        var first = all.FindIndex(line => line.Text.Length > 0);
        if (first < 0)
        {
            log.Wrong(NoteFaults.Empty, "", new(1, 1));
            return new(new("", []), log.Findings);
        }

        var title = TitleOf(all[first].Text, all[first].Number, log);
        var blocks = Blocks(all.Skip(title is null ? first : first + 1), log);
        if (blocks.Count == 0)
        {
            log.Wrong(NoteFaults.Empty, "", new(all[first].Number, 1));
        }

        return new(new(title ?? "", blocks), log.Findings);
    }

    /// <summary>The first lines of a new note.</summary>
    public static string Begin(string title) => $"{TitleMark} {title}\n\n";

    private static string? TitleOf(string line, int number, FindingLog log)
    {
        if (!IsHeading(line))
        {
            log.Wrong(NoteFaults.TitleMissing, "", new(number, 1));
            return null;
        }

        var title = line.TrimStart('#').Trim();
        if (title.Length == 0)
        {
            log.Wrong(NoteFaults.TitleMissing, "", new(number, 1));
        }
        else if (title.Length > LongestTitle)
        {
            log.Wrong(NoteFaults.TitleLong, "", new(number, 1), ("letters", title.Length), ("most", LongestTitle));
            title = title[..LongestTitle];
        }

        return title;
    }

    private static List<NoteBlock> Blocks(IEnumerable<(int Number, string Text)> lines, FindingLog log)
    {
        var blocks = new List<NoteBlock>();
        var paragraph = new List<(int Number, string Text)>();
        var pictures = 0;
        foreach (var line in lines.Append((Number: 0, Text: "")))
        {
            if (line.Text.Length > 0)
            {
                if (IsHeading(line.Text))
                {
                    log.Hint(NoteFaults.HeadingWithin, "", new(line.Number, 1));
                }

                paragraph.Add(line);
                continue;
            }

            if (paragraph.Count == 0)
            {
                continue;
            }

            var words = string.Join(' ', paragraph.Select(each => each.Text));
            if (PictureOf(words) is not { } named)
            {
                blocks.Add(new NoteBlock.Words(words));
            }
            else if (EnumWords<NotePicture>.Find(named) is not { } picture)
            {
                log.Fault(NoteFaults.PictureUnknown, "", new(paragraph[0].Number, 1), Phrase.UnknownWord(named, [.. EnumWords<NotePicture>.All]));
            }
            else if (++pictures <= MostPictures)
            {
                blocks.Add(new NoteBlock.Picture(picture));
            }
            else
            {
                log.Wrong(NoteFaults.PicturesMany, "", new(paragraph[0].Number, 1), ("most", MostPictures));
            }

            paragraph.Clear();
        }

        return blocks;
    }

    /// <summary>"#" and a space, as many as there are; "#4" is text.</summary>
    private static bool IsHeading(string line) => line.StartsWith('#') && line.TrimStart('#') is [] or [' ', ..];

    /// <summary>What a paragraph that is a picture names; null for any other.</summary>
    private static string? PictureOf(string words) =>
        words is ['[', .. var inside, ']'] && !inside.Contains('[') && !inside.Contains(']') && inside.TrimStart().StartsWith(PictureMark, StringComparison.OrdinalIgnoreCase)
            ? inside.TrimStart()[PictureMark.Length..].Trim().ToLowerInvariant()
            : null;
}

/// <summary>What came of reading a note.</summary>
/// <param name="Note">As much of it as can be shown; null when it is too long to be looked at.</param>
/// <param name="Findings">In the order of the text.</param>
public sealed record NoteReading(Note? Note, IReadOnlyList<Finding> Findings);

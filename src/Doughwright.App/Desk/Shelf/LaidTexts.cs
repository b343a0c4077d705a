using System.Text;
using Doughwright.App.Commands;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The texts of a folder, or those that come with the program.</summary>
/// <param name="NotTaken">What is named like a text and no book can hold.</param>
internal sealed record LaidTexts(IReadOnlyList<(string Name, string Text)> Texts, IReadOnlyList<ShelfText> NotTaken)
{
    private const string Shipped = "demo/";

    /// <summary>The shipped texts of a sort.</summary>
    /// <param name="shipped">Name of the sort, with a stroke at its end.</param>
    /// <param name="ending">Of their names in the program.</param>
    public static IReadOnlyList<(string Name, string Text)> Shipping(string shipped, string ending) =>
    [
        .. EmbeddedFile.Under(typeof(LaidTexts).Assembly, Shipped + shipped).Select(name => (
            name[(Shipped.Length + shipped.Length)..^ending.Length],
            Encoding.UTF8.GetString(EmbeddedFile.Bytes(typeof(LaidTexts).Assembly, name)))),
    ];

    public static LaidTexts In(TextFolder folder)
    {
        var (taken, left) = (new List<(string, string)>(), new List<ShelfText>());
        foreach (var text in folder.Texts())
        {
            if (Read(folder, text, out var trouble) is { } read)
            {
                taken.Add((text.Name, read));
            }
            else
            {
                left.Add(text with { Trouble = trouble });
            }
        }

        return new(taken, left);
    }

    /// <summary>What a text says; null with its trouble when a book cannot hold it.</summary>
    public static string? Read(TextFolder folder, ShelfText text, out TextTrouble? trouble)
    {
        if (folder.Read(text) is not { } bytes)
        {
            trouble = text.Trouble ?? TextTrouble.Unreadable;
            return null;
        }

        var file = InputFile.Of(text.Name, bytes);
        trouble = file.Findings.Count == 0 ? null : TextTrouble.NotUtf8;
        return trouble is null ? file.Text : null;
    }
}

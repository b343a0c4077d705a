using System.Text;
using Doughwright.App.Commands;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>What a new book begins with: the texts of a folder that was there before it, or those that come with the program.</summary>
/// <param name="NotTaken">What is named like a text and no book can hold.</param>
internal sealed record LaidTexts(IReadOnlyList<(string Name, string Text)> Texts, IReadOnlyList<ShelfText> NotTaken)
{
    private const string Shipped = "demo/";

    /// <param name="shipped">Name of the shipped texts of this sort, with a stroke at its end.</param>
    public static LaidTexts Of(string folder, string shipped) => Directory.Exists(folder)
        ? InFolder(new(folder))
        : new(Shipping(shipped, TextNames.Ending), []);

    /// <summary>The shipped texts of a sort.</summary>
    /// <param name="ending">Of their names in the program.</param>
    public static IReadOnlyList<(string Name, string Text)> Shipping(string shipped, string ending) =>
    [
        .. EmbeddedFile.Under(typeof(LaidTexts).Assembly, Shipped + shipped).Select(name => (
            name[(Shipped.Length + shipped.Length)..^ending.Length],
            Encoding.UTF8.GetString(EmbeddedFile.Bytes(typeof(LaidTexts).Assembly, name)))),
    ];

    private static LaidTexts InFolder(TextFolder folder)
    {
        var (taken, left) = (new List<(string, string)>(), new List<ShelfText>());
        foreach (var text in folder.Texts())
        {
            if (folder.Read(text) is not { } bytes)
            {
                left.Add(text.Trouble is null ? text with { Trouble = TextTrouble.Unreadable } : text);
            }
            else if (InputFile.Of(text.Name, bytes) is { Findings.Count: 0 } file)
            {
                taken.Add((text.Name, file.Text));
            }
            else
            {
                left.Add(text with { Trouble = TextTrouble.NotUtf8 });
            }
        }

        return new(taken, left);
    }
}

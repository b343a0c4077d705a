using System.Text;
using Doughwright.App.Desk.Shelf;

namespace Doughwright.App.Desk.Fields;

/// <summary>Something that was taken away and can be brought back.</summary>
/// <param name="Name">What it is called in the book.</param>
/// <param name="Title">What it calls itself, or its name.</param>
public sealed record TakenRow(string Name, string Title)
{
    /// <summary>Field of a form by which something is brought back.</summary>
    public const string Back = "back";

    /// <param name="offered">What is offered elsewhere on the page; null for nothing.</param>
    /// <param name="titleOf">What a text calls itself; null where it does not say.</param>
    internal static IReadOnlyList<TakenRow> All(BookTexts texts, string? offered, Func<string, string?> titleOf) =>
    [
        .. texts.TakenAway().Where(paper => paper.Name != offered)
            .Select(paper => new TakenRow(paper.Name, titleOf(Encoding.UTF8.GetString(texts.Read(paper))) is { Length: > 0 } title ? title : paper.Name)),
    ];
}

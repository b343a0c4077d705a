using Doughwright.App.Commands;
using Doughwright.App.Desk.Mending;
using Doughwright.App.Desk.Recipes.Views;
using Doughwright.App.Text;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Keys;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Opening;

/// <summary>A finding in a text in finished words, with its line.</summary>
/// <param name="Mark">Markup of its shape.</param>
/// <param name="Head">Grade, line and place.</param>
/// <param name="Quote">The line and the caret under it; null where the finding is about no line.</param>
internal sealed record QuotedFinding(string Mark, string Head, LineQuote? Quote, string Message, string WayOut)
{
    /// <summary>What a button can do about it.</summary>
    public IReadOnlyList<WayView> Ways { get; init; } = [];

    /// <param name="offers">Ways out that can be carried out in this text.</param>
    public static IReadOnlyList<QuotedFinding> All(IReadOnlyList<Finding> findings, string text, Offers offers, Voice voice)
    {
        var lines = text.Split('\n');
        return [.. findings.Select(finding => Of(finding, lines, voice) with { Ways = WayView.All(offers, finding, voice) })];
    }

    private static QuotedFinding Of(Finding finding, string[] lines, Voice voice)
    {
        var at = finding.Position;
        var line = finding.Quoted ?? (at.IsKnown && at.Line <= lines.Length ? lines[at.Line - 1].TrimEnd('\r') : null);
        return new(
            FindingMark.Draw(FindingShape.Of(finding)),
            FindingsText.Head(finding, voice),
            line is { Length: > 0 } && at.IsKnown ? LineQuote.Of(Page.Clean(line), at) : null,
            FindingWords.Message(finding, voice),
            FindingWords.WayOut(finding, voice));
    }
}

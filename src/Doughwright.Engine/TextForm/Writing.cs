using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>A text that was written, and what a person should know before it replaces an older one.</summary>
/// <param name="Text">The canonical text.</param>
/// <param name="Findings">One finding that counts the comments whose place is gone, or none.</param>
public sealed record Writing(string Text, IReadOnlyList<Finding> Findings)
{
    internal static Writing Of(TextMapping fresh, TextDocument? older)
    {
        var (document, dropped) = CommentCarrier.Carry(fresh, older);
        return new(document.Normalised(), dropped == 0 ? [] : [Dropped(dropped)]);
    }

    private static Finding Dropped(int count) => new()
    {
        Kind = FormFaults.CommentsDropped,
        Grade = Grade.Warning,
        Place = "",
        Arguments = new Dictionary<string, object> { ["count"] = count },
    };
}

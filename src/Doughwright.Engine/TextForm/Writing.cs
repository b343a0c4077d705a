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

    /// <summary>A text changed only where its recipe is. Where that cannot be told line by line, a block is written anew, at last the whole text.</summary>
    internal static Writing Of(string text, TextDocument document, TextMapping before, TextMapping after)
    {
        var whole = Of(after, document);
        var meant = Meaning(whole.Text);
        foreach (var coarse in (bool[])[false, true])
        {
            var patched = TextPatch.Of(text, document, before, after, coarse);
            if (meant is not null && Meaning(patched) == meant && RecipeText.Read(patched).Document is { } fresh)
            {
                var dropped = CommentCarrier.CountIn(document) - CommentCarrier.CountIn(fresh);
                return new(patched, dropped <= 0 ? [] : [Dropped(dropped)]);
            }
        }

        return whole;
    }

    private static string? Meaning(string text) => RecipeText.Read(text).Recipe is { } recipe ? RecipeText.Write(recipe) : null;

    private static Finding Dropped(int count) => new()
    {
        Kind = FormFaults.CommentsDropped,
        Grade = Grade.Warning,
        Place = "",
        Arguments = new Dictionary<string, object> { ["count"] = count },
    };
}

using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Editing;

/// <summary>What comes of a change in a text.</summary>
public abstract record EditedText
{
    private EditedText()
    {
    }

    /// <summary>The changed text. Every line that the change does not touch is as it was, byte for byte.</summary>
    public sealed record Changed(string Text, Deed Deed) : EditedText;

    /// <summary>The text says already what is wanted.</summary>
    public sealed record Same : EditedText;

    /// <summary>The text stays as it is. All reasons, at least one.</summary>
    public sealed record Refused(IReadOnlyList<Finding> Reasons) : EditedText;
}

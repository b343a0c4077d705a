using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Desk.Drafting;

/// <summary>What is typed over the text of a recipe and not written down yet. It outlives its window.</summary>
internal sealed class TypedText(string name, OpenDrafts drafts, BookTries tries)
{
    /// <summary>Null when the text is the book's.</summary>
    public OpenDraft? Draft { get; private set; }

    /// <summary>Why it is not understood; nothing where it is.</summary>
    public IReadOnlyList<Finding> Faults { get; private set; } = [];

    /// <summary>What was typed before this window, and not taken.</summary>
    public void Recall()
    {
        OpenDraft? draft = null;
        if (tries.Do(() => draft = drafts.Of(name)) && draft is not null)
        {
            Judge(draft);
        }
    }

    public void Hold(OpenDraft draft)
    {
        tries.Do(() => drafts.Keep(name, draft));
        Judge(draft);
    }

    /// <summary>Reads it anew.</summary>
    public void Judge()
    {
        if (Draft is { } own)
        {
            Judge(own);
        }
    }

    public void Forget()
    {
        if (Draft is { } draft)
        {
            tries.Do(() => drafts.Drop(name, draft));
        }

        (Draft, Faults) = (null, []);
    }

    private void Judge(OpenDraft draft)
    {
        Draft = draft;
        var reading = RecipeText.Read(draft.Text);
        Faults = reading.Understood && reading.Recipe is not null ? [] : [.. reading.Findings.Where(finding => finding.NotUnderstood || finding.Grade == Grade.Error)];
    }
}

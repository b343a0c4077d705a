using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Editing;

/// <summary>Carries a change out in the text that a recipe was read from.</summary>
public static class Editor
{
    /// <summary>Changes a text by one of the changes of this room.</summary>
    /// <param name="text">A text with a recipe in it.</param>
    /// <param name="change">One of the changes of this room.</param>
    /// <returns>A text in which every line is understood that was understood before, or the reasons why there is none.</returns>
    public static EditedText Carry(string text, Func<Recipe, EditAnswer> change)
    {
        var before = RecipeText.Read(text);
        if (before.Recipe is not { } recipe)
        {
            return new EditedText.Refused([.. before.Findings.Where(finding => finding.Grade == Grade.Error)]);
        }

        switch (change(recipe))
        {
            case EditAnswer.Refused refused:
                return new EditedText.Refused(refused.Reasons);
            case EditAnswer.Done done:
                if (PercentagesOfNothing(done.Recipe) is { Count: > 0 } open)
                {
                    return new EditedText.Refused(open);
                }

                var meant = RecipeText.Write(done.Recipe);
                if (meant == RecipeText.Write(recipe))
                {
                    return new EditedText.Same();
                }

                var fresh = RecipeText.Change(text, _ => done.Recipe).Text;
                var after = RecipeText.Read(fresh);
                var known = before.Findings.Select(finding => finding.Id).ToHashSet();
                var faults = after.Findings.Where(finding => finding.Grade == Grade.Error && !known.Contains(finding.Id)).ToArray();
                // What the text cannot say, such as a part without lines, is told by what reads it.
                return faults.Length > 0 ? new EditedText.Refused(faults)
                    : after.Recipe is { } written && RecipeText.Write(written) == meant ? new EditedText.Changed(fresh, done.Deed)
                    : new EditedText.Refused([Unsaid]);
            default:
                throw new InvalidOperationException("An answer of an unknown kind.");
        }
    }

    /// <summary>Percentages that have lost what they are of: the only flour was taken out, or became a percentage itself.</summary>
    private static List<Finding> PercentagesOfNothing(Recipe recipe) =>
    [
        .. recipe.Components.SelectMany(part => part.Lines.Where(line => line is { Share: not null, Mass: null }).Select(line => new Finding
        {
            Kind = FormFaults.PercentWithoutBase,
            Grade = Grade.Error,
            Place = Places.OfLine(part.Id, line.Id),
            Arguments = new Dictionary<string, object> { ["typed"] = line.Typed, ["line"] = line.Name, ["part"] = part.Name },
        })),
    ];

    private static Finding Unsaid => new() { Kind = "edit-not-said", Grade = Grade.Error, Place = "" };
}

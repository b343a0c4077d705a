using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Desk.Mending;

/// <summary>Where the forms that change a recipe's text are sent.</summary>
/// <param name="Action">Address, with the kitchen in which the findings were shown.</param>
/// <param name="State">The text that was shown: no other is written over.</param>
/// <param name="Written">What was written just now, if anything.</param>
public sealed record MendView(string Action, string State, WrittenView? Written)
{
    internal static MendView Of(RecipeFile file, Question question, WrittenView? written) =>
        new($"/recipes/{Uri.EscapeDataString(file.Name)}/mend{question.Query()}", StateId.OfText(file.Text), written);
}

namespace Doughwright.App.Desk.Recipes;

/// <summary>One recipe on the desk: what is asked of it, and what that comes to. Shared by the islands of a page.</summary>
internal sealed class RecipeDesk
{
}

using Microsoft.AspNetCore.Components;

namespace Doughwright.App.Desk.Layout;

/// <summary>A page beside the page of one recipe.</summary>
public abstract class PageOfRecipe : DeskPage
{
    /// <summary>Name of its text in the book.</summary>
    [Parameter]
    public string Recipe { get; set; } = "";

    /// <summary>Address of the recipe's own page.</summary>
    private protected string Home => $"/recipes/{Uri.EscapeDataString(Recipe)}";
}

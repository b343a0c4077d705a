using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.Recipes.Page;
using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Doughwright.App.Desk.Compare;

/// <summary>The live part of the page: two picks, and all that follows from them. What is picked stands in the address at once.</summary>
public sealed partial class CompareIsland : ComponentBase
{
    private ComparedRecipe? recipe;
    private CompareQuestion? question;
    private CompareView? view;

    /// <summary>Name of the recipe's file.</summary>
    [Parameter, EditorRequired]
    public string Name { get; set; } = "";

    [Inject]
    internal ShelfFolder Shelf { get; set; } = null!;

    [Inject]
    internal Words Words { get; set; } = null!;

    [Inject]
    internal NavigationManager Navigation { get; set; } = null!;

    [Inject]
    internal IJSRuntime Script { get; set; } = null!;

    protected override void OnInitialized()
    {
        recipe = ComparedRecipe.Open(Name, Shelf, Words)?.Recipe;
        if (recipe is not null)
        {
            Ask(CompareQuestion.Of(new Uri(Navigation.Uri).Query, recipe.Other));
        }
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            await ShowAddress();
        }
    }

    private Task PickFirst(string? name) => Pick(question!.WithFirst(name ?? CompareQuestion.Home));

    private Task PickSecond(string? name) => Pick(question!.WithSecond(name ?? CompareQuestion.Home));

    private Task Pick(CompareQuestion asked)
    {
        Ask(asked);
        return ShowAddress();
    }

    private void Ask(CompareQuestion asked)
    {
        var comparison = recipe!.Compare(asked, Speaker.Measures);
        question = comparison.Question;
        view = CompareView.Of(recipe, comparison, Speaker.Voice);
    }

    private Task ShowAddress() => view is null ? Task.CompletedTask : Address.Follow(Script, "/" + Assets["desk.js"], view.Address);
}

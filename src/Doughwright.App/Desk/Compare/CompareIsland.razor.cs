using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.Recipes.Page;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Doughwright.App.Desk.Compare;

/// <summary>The live part of the page: two picks, and all that follows from them. What is picked stands in the address at once.</summary>
public sealed partial class CompareIsland : ComponentBase, IDisposable
{
    private CancellationTokenSource baking = new();
    private ComparedRecipe? recipe;
    private CompareQuestion? question;
    private CompareView? view;

    /// <summary>Name of the recipe's file.</summary>
    [Parameter, EditorRequired]
    public string Name { get; set; } = "";

    [Inject]
    internal ShelfFolder Shelf { get; set; } = null!;

    [Inject]
    internal KeptBakes Bakes { get; set; } = null!;

    [Inject]
    internal Words Words { get; set; } = null!;

    [Inject]
    internal NavigationManager Navigation { get; set; } = null!;

    [Inject]
    internal IJSRuntime Script { get; set; } = null!;

    protected override void OnInitialized()
    {
        recipe = ComparedRecipe.Open(Name, Shelf, Words, Bakes)?.Recipe;
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
            _ = InvokeAsync(Bake);
        }
    }

    public void Dispose()
    {
        baking.Cancel();
        baking.Dispose();
    }

    private Task PickFirst(string? name) => Pick(question!.WithFirst(name ?? CompareQuestion.Home));

    private Task PickSecond(string? name) => Pick(question!.WithSecond(name ?? CompareQuestion.Home));

    private async Task Pick(CompareQuestion asked)
    {
        await baking.CancelAsync();
        baking.Dispose();
        baking = new();
        Ask(asked);
        await ShowAddress();
        _ = InvokeAsync(Bake);
    }

    private void Ask(CompareQuestion asked)
    {
        var comparison = recipe!.Compare(asked, Speaker.Measures);
        question = comparison.Question;
        view = CompareView.Of(recipe, comparison, Speaker.Voice);
    }

    /// <summary>Computes the sections once the page is there, and shows everything anew by them. Another pick ends it, and so does leaving.</summary>
    private async Task Bake()
    {
        if (view is not { AwaitsBakes: true } || question is not { } asked)
        {
            return;
        }

        try
        {
            var (stop, measures) = (baking.Token, Speaker.Measures);
            await Task.Run(() => recipe!.Bake(asked, measures, stop), stop);
            stop.ThrowIfCancellationRequested();
            Ask(asked);
            StateHasChanged();
        }
        catch (OperationCanceledException)
        {
            // Another pick is on its way, or nobody looks any more.
            return;
        }
        catch (Exception fault)
        {
            // Nobody waits for this work: a fault in it is one of the page.
            await DispatchExceptionAsync(fault);
        }
    }

    private Task ShowAddress() => view is null ? Task.CompletedTask : Address.Follow(Script, "/" + Assets["desk.js"], view.Address);
}

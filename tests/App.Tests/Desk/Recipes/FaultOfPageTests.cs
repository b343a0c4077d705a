using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.Recipes;
using Doughwright.App.Desk.Recipes.Page;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Tests.Desk.Asking;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.RenderTree;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.JSInterop;

namespace Doughwright.App.Tests.Desk.Recipes;

/// <summary>What goes wrong while a change is shown is a fault of the page, not lost.</summary>
public sealed class FaultOfPageTests
{
    [Fact]
    public async Task AFaultWhileAChangeIsShown_ReachesThePage()
    {
        using var bench = new Bench();
        await using var services = new ServiceCollection()
            .AddSingleton(bench.Shelf)
            .AddSingleton(Words.Shipped)
            .AddSingleton<IHttpContextAccessor, HttpContextAccessor>()
            .AddSingleton<NavigationManager, Standing>()
            .AddSingleton<IJSRuntime, BrokenScript>()
            .AddSingleton<Speaker>()
            .AddSingleton<RecipeDesk>()
            .AddSingleton<KeptBakes>()
            .BuildServiceProvider();
        await using var page = new Page(services);
        await page.Show();
        Assert.Empty(page.Faults);
        await services.GetRequiredService<RecipeDesk>().Set("air", "17");
        Assert.Equal(BrokenScript.Says, Assert.IsType<JSException>(Assert.Single(page.Faults)).Message);
    }

    private sealed class Standing : NavigationManager
    {
        public Standing() => Initialize("http://127.0.0.1/", "http://127.0.0.1/recipes/potato-rolls");
    }

    private sealed class BrokenScript : IJSRuntime
    {
        public const string Says = "The script cannot be loaded.";

        public ValueTask<TValue> InvokeAsync<TValue>(string identifier, object?[]? args) => ValueTask.FromException<TValue>(new JSException(Says));

        public ValueTask<TValue> InvokeAsync<TValue>(string identifier, CancellationToken cancellationToken, object?[]? args) => InvokeAsync<TValue>(identifier, args);
    }

#pragma warning disable BL0006 // A page that only collects its faults needs the renderer itself.
    private sealed class Page(IServiceProvider services) : Renderer(services, NullLoggerFactory.Instance)
    {
        public List<Exception> Faults { get; } = [];

        public override Dispatcher Dispatcher { get; } = Dispatcher.CreateDefault();

        public Task Show() => Dispatcher.InvokeAsync(() => RenderRootComponentAsync(
            AssignRootComponentId(InstantiateComponent(typeof(RecipeSheet))),
            ParameterView.FromDictionary(new Dictionary<string, object?> { [nameof(RecipeSheet.Name)] = "potato-rolls", [nameof(RecipeSheet.Query)] = "" })));

        protected override void HandleException(Exception exception) => Faults.Add(exception);

        protected override Task UpdateDisplayAsync(in RenderBatch renderBatch) => Task.CompletedTask;
    }
#pragma warning restore BL0006
}

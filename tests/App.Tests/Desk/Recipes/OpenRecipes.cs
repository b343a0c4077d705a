using System.Net;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Hosting;
using Doughwright.App.Desk.Recipes;
using Doughwright.App.Tests.Desk.Asking;
using Doughwright.App.Tests.Desk.Hosting;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;

namespace Doughwright.App.Tests.Desk.Recipes;

/// <summary>The desk itself, on a folder of its own and a free port, and its pages as a browser gets them.</summary>
public sealed class OpenRecipes : IAsyncLifetime
{
    private readonly HttpClient client = new(new SocketsHttpHandler { AllowAutoRedirect = false }) { Timeout = TimeSpan.FromMinutes(2) };
    private WebApplication? host;

    internal Bench Bench { get; } = new();

    public async ValueTask InitializeAsync() => await Open(Words.Shipped);

    internal async Task Open(Words words)
    {
        // The files of the desk are listed under the name of the program, not of the tests.
        Environment.SetEnvironmentVariable("ASPNETCORE_APPLICATIONNAME", typeof(DeskHost).Assembly.GetName().Name);
        (host, var port) = await FreePort.Start(port => DeskHost.Build(port, Bench.Shelf, words));
        client.BaseAddress = new($"http://127.0.0.1:{port}");
    }

    public async Task<IHtmlDocument> Page(string address) =>
        new HtmlParser().ParseDocument(await client.GetStringAsync(address, TestContext.Current.CancellationToken));

    /// <summary>Looks at a recipe until its bakes are computed, as a page with script does: the next look has them at once.</summary>
    internal async Task Baked(string recipe, Question question)
    {
        await using var scope = host!.Services.CreateAsyncScope();
        var looked = scope.ServiceProvider.GetRequiredService<RecipeDesk>();
        looked.Open(recipe, question, MeasureNames.All.GetValueOrDefault(question.First(Question.Measures) ?? "", MeasureSystem.Metric));
        await looked.Bake();
        Assert.False(looked.State!.AwaitsBakes);
    }

    public async Task<HttpStatusCode> Status(string address)
    {
        using var answer = await client.GetAsync(address, TestContext.Current.CancellationToken);
        return answer.StatusCode;
    }

    /// <summary>Where an address leads on; null when it answers itself.</summary>
    public async Task<string?> LeadsTo(string address)
    {
        using var answer = await client.GetAsync(address, TestContext.Current.CancellationToken);
        return answer.Headers.Location is { } leads ? new Uri(client.BaseAddress!, leads).PathAndQuery : null;
    }

    public async ValueTask DisposeAsync()
    {
        client.Dispose();
        if (host is not null)
        {
            await host.DisposeAsync();
        }

        Bench.Dispose();
    }
}

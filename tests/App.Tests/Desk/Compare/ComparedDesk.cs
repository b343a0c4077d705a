using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using Doughwright.App.Desk.Compare;
using Doughwright.App.Desk.Hosting;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Tests.Desk.Asking;
using Doughwright.App.Tests.Desk.Hosting;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;

namespace Doughwright.App.Tests.Desk.Compare;

/// <summary>The desk on a free port, and what the page of two kitchens shows.</summary>
internal sealed partial class ComparedDesk : IAsyncDisposable
{
    private readonly Bench bench;
    private readonly WebApplication host;
    private readonly HttpClient client;

    private ComparedDesk(Bench bench, WebApplication host, int port) =>
        (this.bench, this.host, client) = (bench, host, new() { BaseAddress = new($"http://127.0.0.1:{port}") });

    public Bench Bench => bench;

    public static async Task<ComparedDesk> Open(Words? words = null)
    {
        // The files of the desk are listed under the name of the program, not of the tests.
        Environment.SetEnvironmentVariable("ASPNETCORE_APPLICATIONNAME", typeof(DeskHost).Assembly.GetName().Name);
        var bench = new Bench();
        var (host, port) = await FreePort.Start(port => DeskHost.Build(port, bench.Shelf, words ?? Words.Shipped));
        return new(bench, host, port);
    }

    public async Task<HttpStatusCode> Status(string address)
    {
        using var answer = await client.GetAsync(address, TestContext.Current.CancellationToken);
        return answer.StatusCode;
    }

    /// <summary>Computes the bakes of a comparison, as a page with script does: the next look has them at once.</summary>
    public void Baked(string recipe, string query)
    {
        var compared = ComparedRecipe.Open(recipe, bench.Shelf, Words.Shipped, host.Services.GetRequiredService<KeptBakes>())!.Recipe!;
        compared.Bake(
            CompareQuestion.Of(query, compared.Other), query.Contains("measures=us", StringComparison.Ordinal) ? MeasureSystem.Us : MeasureSystem.Metric, TestContext.Current.CancellationToken);
    }

    /// <summary>Markup of the page.</summary>
    public Task<string> Page(string recipe, string query) => client.GetStringAsync($"/recipes/{recipe}/kitchens{query}", TestContext.Current.CancellationToken);

    /// <summary>The figures that say where they stand in the JSON of the command line, with the words beside them.</summary>
    public static IReadOnlyList<Figure> Figures(string page) =>
    [
        .. Data().Matches(page).Select(match => new Figure(
            match.Groups["of"].Value,
            double.Parse(match.Groups["value"].Value, CultureInfo.InvariantCulture),
            WebUtility.HtmlDecode(match.Groups["text"].Value))),
    ];

    /// <summary>The two command lines the page shows, as arguments.</summary>
    public static IReadOnlyList<string[]> CommandLines(string page) =>
        [.. Code().Matches(page).Select(match => WebUtility.HtmlDecode(match.Groups["line"].Value).Split(' ')[1..])];

    /// <summary>A page without what the server wrote for itself in letters that mean nothing.</summary>
    public static string WithoutState(string page) => Comment().Replace(page, "");

    /// <summary>The words of a part of the page.</summary>
    public static string Part(string page, string from, string to)
    {
        var start = page.IndexOf(from, StringComparison.Ordinal);
        Assert.True(start >= 0, from);
        return WebUtility.HtmlDecode(Tag().Replace(page[start..page.IndexOf(to, start, StringComparison.Ordinal)], "")).Replace('\u00a0', ' ');
    }

    public static string Answer(string page) => Part(page, "<div role=\"status\">", "</section>");

    public static string Table(string page) => Part(page, "<table class=\"fig steptable\">", "</table>");

    public async ValueTask DisposeAsync()
    {
        client.Dispose();
        await host.DisposeAsync();
        bench.Dispose();
    }

    [GeneratedRegex("<data value=\"(?<value>[^\"]*)\" data-of=\"(?<of>[^\"]*)\">(?<text>[^<]*)</data>")]
    private static partial Regex Data();

    [GeneratedRegex("<code>(?<line>[^<]*)</code>")]
    private static partial Regex Code();

    [GeneratedRegex("<!--.*?-->", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    internal sealed record Figure(string Of, double Value, string Text);
}

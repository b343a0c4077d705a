using System.Net;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Doughwright.App.Desk.Hosting;
using Doughwright.App.Tests.Desk.Hosting;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Builder;

namespace Doughwright.App.Tests.Desk.Shelf;

/// <summary>The desk itself on a free port, and a browser's manners without a browser.</summary>
internal sealed class LiveDesk : IAsyncDisposable
{
    private readonly WebApplication host;
    private readonly HttpClient client;

    private LiveDesk(WebApplication host, HttpClient client)
    {
        this.host = host;
        this.client = client;
    }

    public static async Task<LiveDesk> On(DataFolder folder, Words? words = null)
    {
        // The files of the desk are listed under the name of the program, not of the tests.
        Environment.SetEnvironmentVariable("ASPNETCORE_APPLICATIONNAME", typeof(DeskHost).Assembly.GetName().Name);
        var (host, port) = await FreePort.Start(port => DeskHost.Build(port, Shelves.At(folder), words ?? Words.Shipped));
        var client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false }) { BaseAddress = new($"http://127.0.0.1:{port}"), Timeout = TimeSpan.FromMinutes(2) };
        return new(host, client);
    }

    public Task<string> Text(string address) => client.GetStringAsync(address, TestContext.Current.CancellationToken);

    /// <summary>A page with all its rows: one that is still being rehearsed is loaded again, as it says itself.</summary>
    public async Task<IHtmlDocument> Page(string address)
    {
        var page = Parse(await Text(address));
        for (var again = 0; again < 20 && page.QuerySelector(".shelfsaid[role=status]") is not null; again++)
        {
            page = Parse(await Text(address));
        }

        return page;
    }

    public Task<HttpResponseMessage> Get(string address) => client.GetAsync(address, TestContext.Current.CancellationToken);

    /// <summary>The beginning of an answer; disposing of it leaves the page.</summary>
    public Task<HttpResponseMessage> Begin(string address) => client.GetAsync(address, HttpCompletionOption.ResponseHeadersRead, TestContext.Current.CancellationToken);

    public Task<HttpResponseMessage> Head(string address) => client.SendAsync(new(HttpMethod.Head, address), TestContext.Current.CancellationToken);

    /// <summary>Sends the form of a page as a browser does: its hidden fields, the text with two signs for each new line, and the file.</summary>
    public async Task<Answer> Send(string text = "", string fileName = "", byte[]? file = null, IHtmlDocument? from = null, string field = "file")
    {
        var page = from ?? await Page("/open");
        using var form = new MultipartFormDataContent();
        foreach (var hidden in page.QuerySelectorAll("form.openform input[type=hidden]").Cast<IHtmlInputElement>())
        {
            form.Add(new StringContent(hidden.Value), hidden.Name!);
        }

        form.Add(new StringContent(text.ReplaceLineEndings("\r\n")), "text");
        form.Add(new ByteArrayContent(file ?? []), field, fileName.Length == 0 ? "\"\"" : fileName);
        using var request = new HttpRequestMessage(HttpMethod.Post, page.QuerySelector("form.openform")!.GetAttribute("action")) { Content = form };
        request.Headers.TryAddWithoutValidation("Origin", client.BaseAddress!.GetLeftPart(UriPartial.Authority));
        using var response = await client.SendAsync(request, TestContext.Current.CancellationToken);
        return new(response.StatusCode, response.Headers.Location?.OriginalString, Parse(await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)));
    }

    /// <summary>Sends any form of a page as a browser does: its hidden fields, and what was typed.</summary>
    public async Task<Answer> Send(IHtmlFormElement sent, params (string Name, string Value)[] typed)
    {
        var fields = sent.QuerySelectorAll("input[type=hidden]").Cast<IHtmlInputElement>().Select(field => KeyValuePair.Create(field.Name!, field.Value))
            .Concat(typed.Select(field => KeyValuePair.Create(field.Name, field.Value)));
        using var request = new HttpRequestMessage(HttpMethod.Post, sent.GetAttribute("action")) { Content = new FormUrlEncodedContent(fields) };
        request.Headers.TryAddWithoutValidation("Origin", client.BaseAddress!.GetLeftPart(UriPartial.Authority));
        using var response = await client.SendAsync(request, TestContext.Current.CancellationToken);
        return new(response.StatusCode, response.Headers.Location?.OriginalString, Parse(await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)));
    }

    public async ValueTask DisposeAsync()
    {
        client.Dispose();
        await host.DisposeAsync();
    }

    private static IHtmlDocument Parse(string markup) => new HtmlParser().ParseDocument(markup);

    /// <summary>What came back.</summary>
    internal sealed record Answer(HttpStatusCode Status, string? Location, IHtmlDocument Page)
    {
        /// <summary>What stands in the field for the text.</summary>
        public string Field => ((IHtmlTextAreaElement)Page.QuerySelector("#open-text")!).Value;

        /// <summary>The words of the page's own part.</summary>
        public string Words => Page.QuerySelector("main")!.TextContent;
    }
}

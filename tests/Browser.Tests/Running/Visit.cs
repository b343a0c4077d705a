using System.Collections.Concurrent;
using System.Text.Json;
using Deque.AxeCore.Commons;
using Microsoft.Playwright;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace Doughwright.Browser.Tests.Running;

/// <summary>A window with one page in it; notes everything that goes wrong there.</summary>
internal sealed class Visit : IAsyncDisposable
{
    /// <summary>After how long a test in the browser is given up, in milliseconds: what never comes must fail, not wait.</summary>
    public const int Patience = 180_000;

    private readonly ConcurrentQueue<string> _troubles = new();
    private TaskCompletionSource _circuit = new();

    private Visit(IPage page)
    {
        Page = page;
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
            {
                _troubles.Enqueue($"{message.Type}: {message.Text}");
            }
        };
        page.Request += (_, request) =>
        {
            if (request.IsNavigationRequest && request.Frame == page.MainFrame)
            {
                _circuit = new();
            }
        };
        page.WebSocket += (_, socket) => socket.FrameReceived += (_, frame) =>
        {
            if (frame.Binary?.AsSpan().IndexOf("JS.RenderBatch"u8) >= 0)
            {
                _circuit.TrySetResult();
            }
        };
        page.PageError += (_, fault) => _troubles.Enqueue($"fault: {fault}");
        page.RequestFailed += (_, request) => _troubles.Enqueue($"not loaded: {request.Url} {request.Failure}");
    }

    public IPage Page { get; }

    /// <summary>Errors and warnings of the console, faults of scripts, files that did not come, breaches of the content policy.</summary>
    public IReadOnlyCollection<string> Troubles => _troubles;

    public static async Task<Visit> To(IBrowser browser, string address, string path, View view)
    {
        var context = await browser.NewContextAsync(new()
        {
            ViewportSize = new() { Width = view.Width, Height = 900 },
            ColorScheme = view.Scheme,
            JavaScriptEnabled = view.Script,
            ReducedMotion = ReducedMotion.Reduce,
            BaseURL = address,
        });
        var visit = new Visit(await context.NewPageAsync());
        await visit.Go(path);
        return visit;
    }

    /// <summary>Waits until the page answers to what is set on it.</summary>
    public async Task Circuit()
    {
        await _circuit.Task.WaitAsync(TimeSpan.FromSeconds(20));
        // What came has to be laid out first.
        await Page.EvaluateAsync("() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(true))))");
    }

    /// <summary>Waits until the page also shows what it computes once it is there.</summary>
    public async Task Settled()
    {
        await Circuit();
        await Page.WaitForFunctionAsync("() => !document.querySelector('[data-awaits]')", null, new() { Timeout = Patience / 3 });
    }

    public async Task Go(string path)
    {
        await Page.GotoAsync(path, new() { WaitUntil = WaitUntilState.Load });
        await Page.EvaluateAsync("() => document.fonts.ready.then(() => true)");
    }

    /// <summary>Asks the page by a script that gives an object.</summary>
    public async Task<T> Ask<T>(string script, object? argument = null) =>
        (await Page.EvaluateAsync<JsonElement?>(script, argument) is { } answer ? answer.Deserialize<T>(JsonSerializerOptions.Web) : default)!;

    /// <summary>What axe finds on the page itself; a frame is a page by itself.</summary>
    public async Task<AxeResult> Axe(AxeRunOptions rules)
    {
        if (!await Page.EvaluateAsync<bool>("() => 'axe' in window"))
        {
            await Page.EvaluateAsync(new BundledAxeScriptProvider().GetScript());
        }

        var found = await Page.EvaluateAsync<string>("rules => axe.run(document, JSON.parse(rules)).then(JSON.stringify)", JsonConvert.SerializeObject(rules));
        return new(JObject.Parse(found));
    }

    /// <summary>Opens everything that can be opened in place.</summary>
    public Task OpenAll() => Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(part => part.open = true)");

    public async ValueTask DisposeAsync()
    {
        try
        {
            // A window that is closed in the middle of a load can wait for ever for the page that goes.
            await Page.GotoAsync("about:blank");
        }
        catch (PlaywrightException)
        {
            // It is closed already, or another load came between; what was to be seen is seen.
        }

        await Page.Context.DisposeAsync();
    }
}

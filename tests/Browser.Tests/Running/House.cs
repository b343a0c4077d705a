using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Doughwright.Browser.Tests.Running.House))]

namespace Doughwright.Browser.Tests.Running;

/// <summary>One desk and one browser for the whole run.</summary>
public sealed class House : IAsyncLifetime
{
    private IPlaywright? _driver;
    private IBrowser? _browser;
    private RunningDesk? _desk;
    private readonly Lazy<ReaderPages> _readers = new(() => new());

    internal RunningDesk Desk => _desk ?? throw new InvalidOperationException("The desk is not open yet.");

    internal IBrowser Browser => _browser ?? throw new InvalidOperationException("The browser is not open yet.");

    public async ValueTask InitializeAsync()
    {
        var chromium = Chromium.Path;
        _desk = await RunningDesk.Open();
        File.Copy(ReaderPages.TextOf("slipped-rolls"), Path.Join(_desk.Folder, "recipes", "slipped-rolls.yaml"));
        using (var client = new HttpClient())
        {
            // The shelf of a new folder shows its rows one after the other; from now on they are kept.
            await client.GetStringAsync(_desk.Address);
        }

        _driver = await Playwright.CreateAsync();
        _browser = await _driver.Chromium.LaunchAsync(new() { ExecutablePath = chromium, Headless = true, Args = ["--no-sandbox"] });
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _driver?.Dispose();
        if (_readers.IsValueCreated)
        {
            _readers.Value.Dispose();
        }

        if (_desk is not null)
        {
            await _desk.DisposeAsync();
        }
    }

    /// <summary>A window of its own, with nothing of others in it.</summary>
    internal Task<Visit> Visit(string path, View? view = null, string? address = null) => Running.Visit.To(Browser, address ?? Desk.Address, Reachable(path), view ?? new());

    /// <summary>A page of the desk by its path, a readers' page by the address of its file.</summary>
    private string Reachable(string path)
    {
        if (!path.StartsWith(ReaderPages.Prefix, StringComparison.Ordinal))
        {
            return path;
        }

        lock (_readers)
        {
            return _readers.Value.AddressOf(path);
        }
    }
}

using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Doughwright.Browser.Tests.Running.House))]

namespace Doughwright.Browser.Tests.Running;

/// <summary>One desk and one browser for the whole run.</summary>
public sealed class House : IAsyncLifetime
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("desk-");
    private IPlaywright? _driver;
    private IBrowser? _browser;
    private RunningDesk? _desk;
    private readonly Lazy<ReaderPages> _readers = new(() => new());

    internal RunningDesk Desk => _desk ?? throw new InvalidOperationException("The desk is not open yet.");

    internal IBrowser Browser => _browser ?? throw new InvalidOperationException("The browser is not open yet.");

    public async ValueTask InitializeAsync()
    {
        var chromium = Chromium.Path;
        // A new book takes in what lies in the folder: the demo recipes, and one with something to mend.
        var recipes = Directory.CreateDirectory(Path.Join(_folder.FullName, "recipes"));
        foreach (var text in ReaderPages.DemoTexts.Append(ReaderPages.TextOf("slipped-rolls")))
        {
            File.Copy(text, Path.Join(recipes.FullName, Path.GetFileName(text)));
        }

        _desk = await RunningDesk.Open(folder: _folder.FullName);
        using (var client = new HttpClient())
        {
            // The shelf of a new folder shows its rows one after the other; from now on they are kept.
            await client.GetStringAsync(_desk.Address);
        }

        _driver = await Playwright.CreateAsync();
        _browser = await _driver.Chromium.LaunchAsync(new() { ExecutablePath = chromium, Headless = true, Args = ["--no-sandbox"] });
        await WriteNotes(_browser, _desk.Address);
    }

    /// <summary>A book with an author's own recipes begins without notes: they are written as an author writes them.</summary>
    private static async Task WriteNotes(IBrowser browser, string address)
    {
        await using var context = await browser.NewContextAsync(new() { BaseURL = address });
        var page = await context.NewPageAsync();
        page.SetDefaultTimeout(Running.Visit.Patience);
        foreach (var file in ReaderPages.DemoNotes)
        {
            var text = await File.ReadAllTextAsync(file);
            await page.GotoAsync("/notes");
            await page.Locator("#note-title").FillAsync(text.Split('\n')[0].TrimStart('#', ' '));
            await page.Locator("#note-title").PressAsync("Enter");
            await page.WaitForURLAsync($"**/notes/{Path.GetFileNameWithoutExtension(file)}*");
            await page.Locator("#note-text").FillAsync(text);
            // The book has the note as soon as its form is answered; the load of the page that follows can be over before one waits for it.
            await page.RunAndWaitForResponseAsync(
                () => page.Locator("form.noteform button.main").ClickAsync(),
                answer => answer.Request.Method == "POST");
        }
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

        _folder.Delete(recursive: true);
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

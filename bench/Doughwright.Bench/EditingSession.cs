using System.Diagnostics;
using System.Globalization;
using Doughwright.Browser.Tests.Running;
using Microsoft.Playwright;

namespace Doughwright.Bench;

/// <summary>
/// A scripted session of editing in a browser: percentages typed, steps opened, the text changed, everything taken back now and then, the page loaded again.
/// What is alive in the desk after a collection is told early and late, and how long a change takes until the sheet and the text show it.
/// </summary>
internal static class EditingSession
{
    private const int FirstMinute = 2;
    private const string Sheet = "/recipes/tin-loaf/write";

    /// <param name="minutes">How long it lasts, from 3 on.</param>
    public static async Task<int> Run(int minutes)
    {
        var work = Directory.CreateTempSubdirectory("editing-session-").FullName;
        try
        {
            var program = DeskStart.Publish(Path.Join(DeskStart.Root(), "src", "Doughwright.App"), Path.Join(work, "program"), "doughwright.dll");
            var (port, ask) = (DeskStart.FreePort(), Path.Join(work, "ask"));
            using var desk = Process.Start(new ProcessStartInfo("dotnet", [program, "--no-browser", "--folder", Path.Join(work, "folder"), "--port", $"{port}"])
            {
                RedirectStandardOutput = true,
                Environment = { ["DOTNET_STARTUP_HOOKS"] = typeof(EditingSession).Assembly.Location, [StartupHook.Variable] = ask },
            }) ?? throw new InvalidOperationException("dotnet did not start.");
            try
            {
                await desk.StandardOutput.ReadLineAsync();
                using var driver = await Playwright.CreateAsync();
                await using var browser = await driver.Chromium.LaunchAsync(new() { ExecutablePath = Chromium.Path, Args = ["--no-sandbox"] });
                await Edit(await browser.NewPageAsync(), $"http://127.0.0.1:{port}{Sheet}", minutes, ask);
                return 0;
            }
            finally
            {
                desk.Kill();
                await desk.WaitForExitAsync();
            }
        }
        finally
        {
            Directory.Delete(work, recursive: true);
        }
    }

    private static async Task Edit(IPage page, string address, int minutes, string ask)
    {
        var (watch, took, early) = (Stopwatch.StartNew(), new List<double>(), 0L);
        await Open(page, address);
        var changes = 0;
        while (watch.Elapsed < TimeSpan.FromMinutes(minutes))
        {
            changes++;
            took.Add(await Change(page, changes));
            if (changes % 7 == 0)
            {
                await page.Locator(".head .btns button").First.ClickAsync();
                // No hand is back in a field before the answer.
                await Task.Delay(300);
            }

            if (changes % 5 == 0)
            {
                // Opened and closed again.
                await page.Locator(".edsteps .steprow button").First.ClickAsync();
            }

            if (changes % 40 == 0)
            {
                await Open(page, address);
            }

            if (early == 0 && watch.Elapsed >= TimeSpan.FromMinutes(FirstMinute))
            {
                early = await Alive(ask);
            }
        }

        var late = await Alive(ask);
        took.Sort();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"editing for {minutes} min, {changes} changes: alive after a collection {early / 1e6:0.00} MB at minute {FirstMinute}, {late / 1e6:0.00} MB at minute {minutes}, {100.0 * (late - early) / early:+0.0;-0.0} %; "
            + $"a change typed until sheet and text show it, stored: median {took[took.Count / 2]:0} ms, p95 {took[took.Count * 95 / 100]:0} ms"));
    }

    private static async Task Open(IPage page, string address)
    {
        await page.GotoAsync(address);
        await page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        // A page that answers was laid anew; before that nobody takes what is typed.
        await Task.Delay(TimeSpan.FromSeconds(2));
    }

    /// <returns>Milliseconds from leaving the field to the text that shows it.</returns>
    private static async Task<double> Change(IPage page, int number)
    {
        var typed = (1 + number % 800 / 1000.0).ToString("0.###", CultureInfo.InvariantCulture);
        var cell = page.Locator(".cell[id^='percent-dough-']").Last;
        await cell.FillAsync(typed);
        await page.EvaluateAsync(
            """
            typed => { window.shown = new Promise(done => {
              const began = performance.now();
              const look = () => document.querySelector('#write-text').value.includes(': ' + typed + ' %') ? done(performance.now() - began) : requestAnimationFrame(look);
              requestAnimationFrame(look); }); }
            """,
            typed);
        await cell.PressAsync("Tab");
        try
        {
            return await page.EvaluateAsync<double>("() => window.shown").WaitAsync(TimeSpan.FromSeconds(30));
        }
        catch (TimeoutException)
        {
            var faults = await page.Locator("[role=alert]").AllInnerTextsAsync();
            throw new InvalidOperationException($"Change {number}, {typed} %, was not shown within 30 s. The page says: {string.Join(" ", faults)}");
        }
    }

    private static async Task<long> Alive(string ask)
    {
        await File.WriteAllTextAsync(ask, "");
        while (!File.Exists(ask + ".told") || File.Exists(ask))
        {
            await Task.Delay(50);
        }

        var told = await File.ReadAllTextAsync(ask + ".told");
        File.Delete(ask + ".told");
        return long.Parse(told, CultureInfo.InvariantCulture);
    }
}

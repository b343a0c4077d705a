using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Doughwright.Bench;

/// <summary>A shelf of 200 different recipes: the first time, when all are rehearsed, and from what is kept. Time on the clock, and what the processors spend.</summary>
internal static partial class DeskShelf
{
    private const int Recipes = 200;
    private const int Again = 15;

    public static async Task<int> Run()
    {
        var work = Directory.CreateTempSubdirectory("desk-shelf-").FullName;
        try
        {
            var program = DeskStart.Publish(Path.Join(DeskStart.Root(), "src", "Doughwright.App"), Path.Join(work, "program"), "doughwright.dll");
            var folder = Path.Join(work, "folder");
            Lay(Path.Join(folder, "recipes"));
            Directory.CreateDirectory(Path.Join(folder, "kitchens"));
            var port = DeskStart.FreePort();
            using var desk = Process.Start(new ProcessStartInfo("dotnet", [program, "--no-browser", "--folder", folder, "--port", $"{port}"])
            {
                RedirectStandardOutput = true,
                Environment = { ["XDG_STATE_HOME"] = work },
            }) ?? throw new InvalidOperationException("dotnet did not start.");
            try
            {
                await desk.StandardOutput.ReadLineAsync();
                using var client = new HttpClient { BaseAddress = new($"http://127.0.0.1:{port}"), Timeout = TimeSpan.FromMinutes(2) };
                await client.GetStringAsync("/open");
                var (first, firstWork) = await Measure(client, desk, "/?day=2026-11-28&time=16:00");
                var kept = new List<(double Took, double Work)>();
                for (var time = 0; time < Again; time++)
                {
                    kept.Add(await Measure(client, desk, $"/?day=2026-11-28&time={time}:30"));
                }

                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Recipes} recipes: first time {first:0} ms ({firstWork:0} ms of processors); kept, median of {Again}: {DeskStart.Median([.. kept.Select(one => one.Took)]):0} ms ({DeskStart.Median([.. kept.Select(one => one.Work)]):0} ms of processors)"));
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

    /// <returns>Milliseconds until the whole page is there, and those that the desk's processors worked meanwhile.</returns>
    private static async Task<(double Took, double Work)> Measure(HttpClient client, Process desk, string address)
    {
        desk.Refresh();
        var before = desk.TotalProcessorTime;
        var watch = Stopwatch.StartNew();
        var page = await client.GetStringAsync(address);
        var took = watch.Elapsed.TotalMilliseconds;
        desk.Refresh();
        var rows = RowOfPage().Count(page);
        return rows >= Recipes ? (took, (desk.TotalProcessorTime - before).TotalMilliseconds) : throw new InvalidOperationException($"Only {rows} rows came.");
    }

    private static void Lay(string folder)
    {
        Directory.CreateDirectory(folder);
        var texts = Directory.GetFiles(Path.Join(DeskStart.Root(), "demo", "recipes"), "*.yaml").Order(StringComparer.Ordinal).Select(File.ReadAllText).ToArray();
        for (var i = 0; i < Recipes; i++)
        {
            var warmer = Air().Replace(texts[i % texts.Length], string.Create(CultureInfo.InvariantCulture, $"air: {20 + (i / 40.0):0.###} C"));
            File.WriteAllText(Path.Join(folder, $"variant-{i}.yaml"), warmer.Replace("title: ", $"title: {i} ", StringComparison.Ordinal));
        }
    }

    [GeneratedRegex("<li class=\"row\"")]
    private static partial Regex RowOfPage();

    [GeneratedRegex("air: [0-9.]+ C")]
    private static partial Regex Air();
}

using System.Diagnostics;
using System.Text.Json;
using Doughwright.Browser.Tests.Running;
using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Look;

/// <summary>A painted picture is held against what a browser makes of the same picture as SVG: another painter, another reader of faces and styles.</summary>
public class PaintedPictureTests(House house)
{
    private const int Width = 1400;

    /// <summary>Mean difference of a channel, of 255, over the whole picture and over the box of one text.</summary>
    private const double MostInAll = 2;
    private const double MostInText = 28;

    private const string Compare = """
        async ([shot, painted]) => {
          const read = async data => {
            const image = new Image();
            image.src = 'data:image/png;base64,' + data;
            await image.decode();
            const canvas = document.createElement('canvas');
            [canvas.width, canvas.height] = [image.width, image.height];
            const context = canvas.getContext('2d');
            context.drawImage(image, 0, 0);
            return { width: image.width, height: image.height, data: context.getImageData(0, 0, image.width, image.height).data };
          };
          const boxes = [...document.querySelectorAll('svg text')].map(text => ({ box: text.getBoundingClientRect(), words: text.textContent }));
          const [one, other] = [await read(shot), await read(painted)];
          const differs = (left, top, right, bottom) => {
            let sum = 0, count = 0;
            for (let y = Math.max(0, Math.floor(top)); y < Math.min(one.height, bottom); y++) {
              for (let x = Math.max(0, Math.floor(left)); x < Math.min(one.width, right); x++) {
                for (let channel = 0; channel < 3; channel++) {
                  sum += Math.abs(one.data[4 * (y * one.width + x) + channel] - other.data[4 * (y * one.width + x) + channel]);
                  count++;
                }
              }
            }
            return count ? sum / count : 0;
          };
          return {
            sizes: [one.width, one.height, other.width, other.height],
            all: differs(0, 0, one.width, one.height),
            texts: boxes.map(({ box, words }) => ({ words, differs: differs(box.left, box.top, box.right, box.bottom) })),
          };
        }
        """;

    [Theory(Timeout = Visit.Patience)]
    [InlineData("strip", "light")]
    [InlineData("strip", "dark")]
    [InlineData("tall", "light")]
    [InlineData("rise", "dark")]
    [InlineData("heat", "light")]
    [InlineData("balance", "light")]
    public async Task Painted_LooksAsTheBrowserDrawsIt(string kind, string ground)
    {
        var folder = Directory.CreateTempSubdirectory("painted-").FullName;
        var page = await house.Browser.NewPageAsync();
        try
        {
            var (svg, png) = (Path.Join(folder, "a.svg"), Path.Join(folder, "a.png"));
            await Write(kind, ground, svg);
            await Write(kind, ground, png);
            await page.SetContentAsync($"<body style=\"margin:0\">{await File.ReadAllTextAsync(svg, TestContext.Current.CancellationToken)}</body>");
            var height = await page.EvaluateAsync<int>("() => +document.querySelector('svg').getAttribute('height')");
            await page.SetViewportSizeAsync(Width, height);
            await page.EvaluateAsync("() => Promise.all([...document.fonts].map(face => face.load())).then(() => true)");
            var shot = await page.ScreenshotAsync(new() { Clip = new() { X = 0, Y = 0, Width = Width, Height = height }, Scale = ScreenshotScale.Css });
            var painted = await File.ReadAllBytesAsync(png, TestContext.Current.CancellationToken);
            var found = (await page.EvaluateAsync<JsonElement?>(Compare, new[] { Convert.ToBase64String(shot), Convert.ToBase64String(painted) }))!.Value.Deserialize<Found>(JsonSerializerOptions.Web)!;
            Assert.Equal([Width, height, Width, height], found.Sizes);
            Assert.NotEmpty(found.Texts);
            Assert.True(found.All < MostInAll, $"{kind}, {ground}: {found.All:0.00}");
            Assert.All(found.Texts, text => Assert.True(text.Differs < MostInText, $"{kind}, {ground}, “{text.Words}”: {text.Differs:0.0}"));
        }
        finally
        {
            await page.CloseAsync();
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task Write(string kind, string ground, string file)
    {
        var recipe = Path.Join(Root, "demo", "recipes", "pilot-ring.yaml");
        var start = new ProcessStartInfo(Environment.ProcessPath!, [RunningDesk.Program, "picture", recipe, "--of", kind, "--ground", ground, "--width", $"{Width}", "--out", file])
        {
            RedirectStandardOutput = true,
        };
        using var run = Process.Start(start)!;
        await run.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await run.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(0, run.ExitCode);
    }

    private static string Root
    {
        get
        {
            var folder = new DirectoryInfo(AppContext.BaseDirectory);
            while (!File.Exists(Path.Join(folder!.FullName, "Doughwright.slnx")))
            {
                folder = folder.Parent;
            }

            return folder.FullName;
        }
    }

    private sealed record Found(int[] Sizes, double All, Lettered[] Texts);

    private sealed record Lettered(string Words, double Differs);
}

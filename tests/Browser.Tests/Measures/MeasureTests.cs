using Doughwright.Browser.Tests.Running;

namespace Doughwright.Browser.Tests.Measures;

/// <summary>Weight of the recipe page, and time from a key to its picture. Figures are printed; the tests guard five times what is aimed at in time.</summary>
[Collection(nameof(Alone))]
[Trait("Category", "Slow")]
public class MeasureTests(House house)
{
    private const int HeaviestPage = 250_000;
    private const int Keys = 30;

    [Fact(Timeout = Visit.Patience)]
    public async Task RecipePage_WeighsLessThan250Kilobytes()
    {
        await using var visit = await house.Visit("about:blank");
        var network = await visit.Page.Context.NewCDPSessionAsync(visit.Page);
        var names = new Dictionary<string, string>();
        var bytes = new Dictionary<string, double>();
        network.Event("Network.responseReceived").OnEvent += (_, what) => names[what!.Value.GetProperty("requestId").GetString()!] =
            what.Value.GetProperty("response").GetProperty("url").GetString()!;
        network.Event("Network.loadingFinished").OnEvent += (_, what) => bytes[what!.Value.GetProperty("requestId").GetString()!] =
            what.Value.GetProperty("encodedDataLength").GetDouble();
        await network.SendAsync("Network.enable");
        await network.SendAsync("Network.setCacheDisabled", new() { ["cacheDisabled"] = true });
        await visit.Go("/recipes/potato-rolls");
        await visit.Circuit();
        await visit.Page.WaitForTimeoutAsync(500);
        foreach (var (id, size) in bytes.OrderByDescending(pair => pair.Value))
        {
            Console.WriteLine($"page weight: {size,8:0} {(names.TryGetValue(id, out var name) ? new Uri(name).AbsolutePath : id)}");
        }

        Console.WriteLine($"page weight: {bytes.Values.Sum(),8:0} bytes transferred in all");
        Assert.InRange(bytes.Count, 8, 40);
        Assert.InRange(bytes.Values.Sum(), 60_000, HeaviestPage);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task KeyInAField_IsANewPicture_WithinHalfASecond()
    {
        await using var visit = await house.Visit("/recipes/potato-rolls");
        await visit.Circuit();
        await visit.Page.EvaluateAsync("""
            () => {
              window.took = [];
              let typed = null;
              document.addEventListener('input', () => { typed = performance.now(); }, true);
              new MutationObserver(() => {
                if (typed === null) return;
                const began = typed;
                typed = null;
                requestAnimationFrame(() => window.took.push(performance.now() - began));
              }).observe(document.querySelector('.stripbox'), { childList: true, subtree: true, characterData: true, attributes: true });
            }
            """);
        var room = visit.Page.Locator("#field-air");
        for (var key = 0; key < Keys; key++)
        {
            await room.FillAsync($"{14 + key % 15}");
            await visit.Page.WaitForFunctionAsync("count => window.took.length >= count", key + 1);
        }

        var took = (await visit.Page.EvaluateAsync<double[]>("() => window.took")).Order().ToArray();
        Console.WriteLine($"key to new picture: median {took[Keys / 2]:0} ms, slowest {took[^1]:0} ms of {Keys}");
        Assert.InRange(took[Keys / 2], 0, 500);
    }
}

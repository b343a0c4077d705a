using Doughwright.Browser.Tests.Running;

namespace Doughwright.Browser.Tests.Look;

/// <summary>Every colour of text is readable on every ground, light and dark.</summary>
public class TokenTests(House house)
{
    private const string Contrasts = """
        () => {
          const probe = document.body.appendChild(document.createElement('span'));
          const channels = name => {
            probe.style.color = getComputedStyle(document.documentElement).getPropertyValue(name).trim();
            return getComputedStyle(probe).color.match(/[\d.]+/g).slice(0, 3).map(v => v / 255).map(v => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4);
          };
          const light = name => channels(name).reduce((sum, v, i) => sum + v * [0.2126, 0.7152, 0.0722][i], 0);
          const pairs = ['--ink', '--ink-2', '--ink-3', '--hand'].flatMap(text => ['--paper', '--sheet', '--hand-tint'].map(ground => [text, ground]));
          return pairs.map(([text, ground]) => {
            const [low, high] = [light(text), light(ground)].sort((a, b) => a - b);
            return { pair: `${text} on ${ground}`, contrast: (high + 0.05) / (low + 0.05) };
          });
        }
        """;

    [Theory(Timeout = Visit.Patience)]
    [InlineData(false)]
    [InlineData(true)]
    public async Task EveryColourOfText_IsReadableOnEveryGround(bool dark)
    {
        await using var visit = await house.Visit(Pages.Nothing, new(Dark: dark));
        var pairs = await visit.Ask<IReadOnlyList<Pair>>(Contrasts);
        Assert.Equal(12, pairs.Count);
        Assert.All(pairs, pair => Assert.True(pair.Contrast >= 4.5, $"{pair.Name}: {pair.Contrast:0.0}"));
    }

    private sealed record Pair([property: System.Text.Json.Serialization.JsonPropertyName("pair")] string Name, double Contrast);
}

using Doughwright.Browser.Tests.Running;

namespace Doughwright.Browser.Tests.Look;

/// <summary>A page fits the window, down to 320 pixels; only what says so scrolls sideways by itself.</summary>
public class ReflowTests(House house)
{
    private const string Wide = """
        () => {
          const over = document.documentElement.scrollWidth - innerWidth;
          if (over <= 0) return [];
          return [`${over} px too wide`, ...[...document.body.querySelectorAll('*')]
            .filter(part => part.getBoundingClientRect().right > innerWidth + 1 && !part.closest('.scroll, svg')).slice(0, 5).map(part => part.outerHTML.slice(0, 100))];
        }
        """;

    private const string Small = """
        () => [...document.querySelectorAll('button, input:not([type=hidden]), select, textarea, summary, .btn')]
          .map(part => part.type === 'radio' || part.type === 'checkbox' ? part.closest('label') ?? part.labels?.[0] ?? part : part)
          .filter(part => part.checkVisibility({ visibilityProperty: true }) && !part.closest('p, dialog'))
          .map(part => [part, part.getBoundingClientRect()])
          .filter(([, box]) => box.width > 1 && box.height < 47.5)
          .map(([part, box]) => `${part.outerHTML.slice(0, 100)}: ${box.height.toFixed(0)} px high`)
        """;

    /// <summary>A table by room with a column for what goes in and three rises is folded where it has no room.</summary>
    [Theory(Timeout = Visit.Patience)]
    [InlineData(320)]
    [InlineData(390)]
    [InlineData(768)]
    public async Task TableByRoom_StaysInItsSection(int width)
    {
        await using var visit = await house.Visit("reader:three-rises", new(width));
        var (table, frame) = (visit.Page.Locator(".rooms table"), visit.Page.Locator(".rooms .scroll"));
        Assert.Equal(4, await table.Locator("thead th:not(:first-child)").CountAsync());
        Assert.True(await frame.EvaluateAsync<bool>("frame => frame.scrollWidth <= frame.clientWidth"));
        Assert.Equal(width < 640, await table.Locator("tbody tr").First.Locator(".onfold").First.IsVisibleAsync());
    }

    [Theory(Timeout = Visit.Patience)]
    [ClassData(typeof(EveryPage))]
    public async Task NothingScrollsSideways(string path)
    {
        foreach (var width in new[] { 320, 390, 768, 1024, 1280 })
        {
            await using var visit = await house.Visit(path, new(width));
            await visit.OpenAll();
            Assert.Empty(await visit.Page.EvaluateAsync<string[]>(Wide));
        }
    }

    /// <summary>A tall strip leaves no half of a page empty: the first head beside it stands at its beginning.</summary>
    [Theory(Timeout = Visit.Patience)]
    [InlineData("/recipes/potato-rolls")]
    [InlineData("/recipes/hearth-loaf")]
    [InlineData("reader:potato-rolls")]
    [InlineData("reader:hearth-loaf")]
    public async Task BesideATallStrip_SomethingOfItsRecipeStands(string path)
    {
        foreach (var width in new[] { 768, 900, 1024, 1150 })
        {
            await using var visit = await house.Visit(path, new(width));
            var beside = await visit.Page.EvaluateAsync<string[]>("""
                () => {
                  const strip = document.querySelector('.stripbox').getBoundingClientRect();
                  return [...document.querySelectorAll('main h2')].filter(head => {
                    const box = head.getBoundingClientRect();
                    return box.left >= strip.right && Math.abs(box.top - strip.top) < 40;
                  }).map(head => head.textContent);
                }
                """);
            Assert.Single(beside);
        }
    }

    [Theory(Timeout = Visit.Patience)]
    [ClassData(typeof(EveryPage))]
    public async Task Controls_AreHighEnoughForAFinger(string path)
    {
        foreach (var width in new[] { 1280, 390 })
        {
            await using var visit = await house.Visit(path, new(width));
            await visit.OpenAll();
            Assert.Empty(await visit.Page.EvaluateAsync<string[]>(Small));
        }
    }

    [Theory(Timeout = Visit.Patience)]
    [ClassData(typeof(EveryPage))]
    public async Task WiderSpacedText_StaysWhole(string path)
    {
        await using var visit = await house.Visit(path, new(390));
        await visit.OpenAll();
        // The spacing that a reader may ask for: lines 1.5, letters 0.12, words 0.16.
        await visit.Page.EvaluateAsync("""
            () => {
              const sheet = new CSSStyleSheet();
              sheet.replaceSync('*:not(svg *) { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important }');
              document.adoptedStyleSheets = [sheet];
            }
            """);
        Assert.Empty(await visit.Page.EvaluateAsync<string[]>(Wide));
    }
}

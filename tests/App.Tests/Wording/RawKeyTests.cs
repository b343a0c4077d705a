using System.Net;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Doughwright.App.Desk.Fields;
using Doughwright.App.Desk.Ingredients;
using Doughwright.App.Desk.Kitchens;
using Doughwright.App.Tests.Desk.Hosting;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Engine.Ingredients;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Wording;

/// <summary>A key without words shows itself, so that the rest can still be read: no page and no form of the desk shows one.</summary>
public partial class RawKeyTests
{
    /// <summary>Pages of one kind differ in what they show: so many of each are looked at.</summary>
    private const int OfEachKind = 3;

    /// <summary>States of pages that no link leads to.</summary>
    private static readonly string[] Asked =
    [
        "/?kitchen=mountain", "/recipes/potato-rolls?kitchen=mountain&dough=26C&free=potato,scald", "/recipes/tin-loaf?kitchen=summer&air=900C&measures=us",
        "/recipes/potato-rolls/swaps?replace=butter%3Dolive%20oil", "/recipes/pilot-ring/swaps?replace=butter%3Doliv%20oyl&another=yes", "/recipes/potato-rolls/size?pieces=24",
        "/recipes/hearth-loaf/size?dough=501kg", "/recipes/potato-rolls/place?kitchen=mountain&step=bulk&to=26C", "/recipes/potato-rolls/ready?kitchen=mountain&start=22:00&by=5:00",
        "/recipes/potato-rolls/sides?right=tin-loaf", "/recipes/potato-rolls/kitchens?second=mountain", "/larder?words=butter", "/larder/butter-unsalted", "/find?words=potato",
        "/notes/scalding?recipe=potato-rolls", "/kitchens/mountain/change", "/book?look=yes",
    ];

    private static readonly HashSet<string> Families =
        [.. Words.Shipped.Entries.Keys.Where(key => key.Contains('.', StringComparison.Ordinal)).Select(key => key[..key.IndexOf('.', StringComparison.Ordinal)])];

    [Fact]
    public async Task NoPage_ShowsAKey()
    {
        using var scratch = Scratch.WithTheShipped();
        scratch.Put("slipped-rolls", File.ReadAllText(House.PathTo("tests", "data", "pages", "slipped-rolls.yaml")));
        await using var desk = await LiveDesk.On(scratch.Data);
        await desk.Send((IHtmlFormElement)(await desk.Page("/larder/new")).QuerySelector("form.paperform")!, ("ingredient", "mill flour"), ("counts-as", "flour"), ("protein", "12"));
        var (waiting, seen, kinds) = (new Queue<string>([.. Asked, .. EveryAddress.All()]), new HashSet<string>(), new Dictionary<string, int>());
        List<string> shown = [];
        while (waiting.TryDequeue(out var address))
        {
            var kind = KindOf(address);
            if (!seen.Add(address) || (kinds[kind] = kinds.GetValueOrDefault(kind) + 1) > OfEachKind)
            {
                continue;
            }

            using var answer = await desk.Get(address);
            if (answer.Content.Headers.ContentType?.MediaType != "text/html")
            {
                continue;
            }

            Assert.NotEqual(HttpStatusCode.InternalServerError, answer.StatusCode);
            var page = new AngleSharp.Html.Parser.HtmlParser().ParseDocument(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
            shown.AddRange(Keys(page).Select(key => $"{address}: {key}"));
            foreach (var link in page.QuerySelectorAll("main a[href]").Select(link => link.GetAttribute("href")!).Where(link => !link.Contains(':', StringComparison.Ordinal) || link.Contains('?', StringComparison.Ordinal)))
            {
                waiting.Enqueue(link.StartsWith('/') || link.StartsWith('#') ? link : "/" + link);
            }
        }

        Assert.Equal([], shown);
        Assert.InRange(kinds.Count, 30, 200);
    }

    [Theory]
    [InlineData("/larder/new", "form.paperform")]
    [InlineData("/kitchens/new", "form.paperform")]
    [InlineData("/new", "form.openform")]
    public async Task NoRefusedForm_ShowsAKey(string address, string form)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var answer = await desk.Send((IHtmlFormElement)(await desk.Page(address)).QuerySelector(form)!);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Equal([], Keys(answer.Page));
    }

    [Fact]
    public void EveryFieldOfAForm_AndEveryChoiceInIt_HasWords() => Assert.All(new[] { OwnForm.Plan, KitchenForm.Plan }, plan => Assert.Equal([], Missing(plan)));

    [Theory]
    [InlineData("<p>field.ingredient.counts-as.flour</p>", "field.ingredient.counts-as.flour")]
    [InlineData("<p>It says desk.recipes here.</p>", "desk.recipes")]
    [InlineData("<p title='shelf.show-only'>x</p>", "shelf.show-only")]
    [InlineData("<p>book.db and 1.5 g of it, e.g. <code>book.db</code></p>", null)]
    public void AKey_IsFound_AndNothingElse(string markup, string? key) =>
        Assert.Equal(key is null ? [] : [key], Keys(new AngleSharp.Html.Parser.HtmlParser().ParseDocument(markup)));

    private static IEnumerable<string> Missing(FormPlan plan) => plan.Keys
        .SelectMany(key => (plan.Choices(key) ?? []).Select(choice => $"{Slug.Of(key)}.{Slug.Of(choice)}").Append(Slug.Of(key)))
        .Concat(plan.Groups.Select(group => group.Name))
        .Select(name => $"field.{plan.Words}.{name}").Where(key => Words.Shipped.Find(key) is null);

    /// <summary>What stands in the page for a person, by eye or by ear. Names of files and what is typed are set as code.</summary>
    private static IEnumerable<string> Keys(IDocument page) => page.All
        .Where(element => element.LocalName is not ("code" or "script" or "style" or "textarea" or "pre"))
        .SelectMany(element => element.ChildNodes.OfType<IText>().Select(text => text.Data)
            .Concat(new[] { "title", "aria-label", "placeholder", "alt", "label" }.Select(name => element.GetAttribute(name) ?? "")))
        .SelectMany(text => Key().Matches(text).Select(match => match.Value))
        .Where(key => Families.Contains(key[..key.IndexOf('.', StringComparison.Ordinal)]) && !key.StartsWith("book.db", StringComparison.Ordinal));

    /// <summary>Pages of one recipe, ingredient, kitchen or note are of one kind with those of another.</summary>
    private static string KindOf(string address) => Name().Replace(address.Split('?', '#')[0], "$1/NAME");

    [GeneratedRegex(@"(?<![\p{L}\d./_-])[a-z][a-z0-9-]*(?:\.[a-z][a-z0-9-]*)+(?![\p{L}\d/_])")]
    private static partial Regex Key();

    [GeneratedRegex("^(/recipes|/notes|/larder/own|/larder|/kitchens|/photos)/(?!own/|new$)[^/]+")]
    private static partial Regex Name();
}

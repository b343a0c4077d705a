using System.Globalization;
using System.Net;
using Doughwright.App.Tests.Desk.Recipes;

namespace Doughwright.App.Tests.Desk.Drafting;

/// <summary>The page on which a recipe is written, as it is served.</summary>
public sealed class DraftPageTests(OpenRecipes desk) : IClassFixture<OpenRecipes>
{
    public static TheoryData<string> Recipes =>
        [.. Directory.EnumerateFiles(House.PathTo("demo", "recipes"), "*.yaml").Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Recipes))]
    public async Task EveryFigure_IsTheCommandLines(string recipe)
    {
        var page = await desk.Page($"/recipes/{recipe}/write");
        var said = new CommandLineFigures(desk.Bench.Shelf.RecipeTexts.FileOf(recipe), []);
        var figures = page.QuerySelectorAll("[data-of]");
        Assert.True(figures.Length > 20);
        foreach (var figure in figures)
        {
            var place = figure.GetAttribute("data-of")!;
            // What stands in a field is what was typed; the unrounded figure is beside it.
            var exact = figure.GetAttribute(figure.LocalName == "input" ? "data-exact" : "value");
            var theirs = said.At(place);
            Assert.True((exact is null) == (theirs is null), $"{place}: {exact} on the page, {theirs} on the command line.");
            Assert.True(exact is null || Math.Abs(double.Parse(exact, CultureInfo.InvariantCulture) - theirs!.Value) <= 1e-9 * Math.Max(1, theirs.Value), $"{place}: {exact} on the page, {theirs} on the command line.");
        }
    }

    [Fact]
    public async Task TypedCells_AreThoseTheTextTypes()
    {
        var page = await desk.Page("/recipes/potato-rolls/write");
        var typed = page.QuerySelectorAll(".cell.typed").Select(cell => cell.GetAttribute("aria-label")!).ToArray();
        Assert.Contains("butter, weight, typed", typed);
        Assert.DoesNotContain(typed, label => label.StartsWith("scald,", StringComparison.Ordinal));
        Assert.Equal("50", page.QuerySelector("#weight-dough-butter")!.GetAttribute("value"));
        Assert.Equal("15.6", page.QuerySelector("#percent-dough-butter")!.GetAttribute("value"));
    }

    [Fact]
    public async Task RecipePage_LeadsToIt_AndItLeadsBack()
    {
        Assert.NotNull((await desk.Page("/recipes/potato-rolls")).QuerySelector("a[href='/recipes/potato-rolls/write']"));
        Assert.NotNull((await desk.Page("/recipes/potato-rolls/write")).QuerySelector("a[href='/recipes/potato-rolls']"));
    }

    [Fact]
    public async Task RecipeThatIsNotThere_IsNotFound() => Assert.Equal(HttpStatusCode.NotFound, await desk.Status("/recipes/nothing/write"));
}

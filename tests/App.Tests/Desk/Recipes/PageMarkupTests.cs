using System.Net;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace Doughwright.App.Tests.Desk.Recipes;

/// <summary>The page as a browser, a reader by ear and somebody of ill will get it.</summary>
public sealed partial class PageMarkupTests(OpenRecipes desk) : IClassFixture<OpenRecipes>
{
    private const string Long = "Donaudampfschifffahrtselektrizitaetenhauptbetriebswerkbauunterbe";

    [Theory]
    [InlineData("/recipes/potato-rolls")]
    [InlineData("/recipes/potato-rolls?kitchen=winter-cottage&dough=26C&free=potato,scald&measures=us")]
    [InlineData("/recipes/potato-rolls?air=abc&kitchen=mountain")]
    [InlineData("/recipes/hearth-loaf?air=2C")]
    [InlineData("/recipes/tin-loaf?kitchen=summer")]
    public async Task Page_IsWhole(string address)
    {
        var page = await desk.Page(address);
        var ids = page.QuerySelectorAll("[id]").Select(element => element.Id).ToArray();
        Assert.Equal(ids.Length, ids.Distinct().Count());
        Assert.Single(page.QuerySelectorAll("h1"));
        Assert.Empty(page.QuerySelectorAll("[style], main script"));
        foreach (var field in page.QuerySelectorAll("main input:not([type=hidden]), main select"))
        {
            Assert.True(field.Closest("label") is not null || page.QuerySelector($"label[for='{field.Id}']") is not null, $"{field.OuterHtml} has no label.");
        }

        foreach (var pointer in page.QuerySelectorAll("[aria-labelledby], [aria-describedby]"))
        {
            var named = (pointer.GetAttribute("aria-labelledby") + " " + pointer.GetAttribute("aria-describedby")).Split(' ', StringSplitOptions.RemoveEmptyEntries);
            Assert.All(named, id => Assert.Contains(id, ids));
        }

        var levels = page.QuerySelectorAll("h1, h2, h3, h4").Select(head => head.TagName[1] - '0').ToArray();
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1));
        Assert.DoesNotMatch(KeyOfWords(), page.QuerySelector("main")!.TextContent);
        Assert.DoesNotContain('{', page.QuerySelector("main")!.TextContent);
    }

    [Fact]
    public async Task WhatCannotBeWeighed_StandsAsNotKnown()
    {
        desk.Bench.WriteRecipe("quay", Commands.UnknownMassTests.Text);
        var page = await desk.Page("/recipes/quay");
        var rows = page.QuerySelectorAll("tr").Where(row => row.QuerySelector("th")?.TextContent.Contains("Flaxseed", StringComparison.Ordinal) == true).ToArray();
        Assert.Contains(rows, row => row.TextContent.Contains("not known", StringComparison.Ordinal));
        Assert.All(rows.SelectMany(row => row.QuerySelectorAll("td")), cell => Assert.DoesNotMatch(@"^\s*0(\s|$)", cell.TextContent));
        Assert.Contains("flaxseed cannot be weighed", page.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ARefusedValue_StandsInItsField_WithTheReason_AndTheRestHolds()
    {
        var page = await desk.Page("/recipes/potato-rolls?air=abc&tap=5C");
        var field = (IHtmlInputElement)page.QuerySelector("#field-air")!;
        Assert.Equal("abc", field.Value);
        Assert.Equal("true", field.GetAttribute("aria-invalid"));
        var reason = page.GetElementById(field.GetAttribute("aria-describedby")!)!;
        Assert.Contains("abc", reason.TextContent, StringComparison.Ordinal);
        Assert.Equal("5", ((IHtmlInputElement)page.QuerySelector("#field-tap")!).Value);
    }

    [Fact]
    public async Task ThePickedKitchen_IsTheOneThatIsShown()
    {
        var page = await desk.Page("/recipes/potato-rolls?kitchen=mountain");
        var picked = Assert.Single(page.QuerySelectorAll<IHtmlInputElement>("input[name=kitchen]"), radio => radio.IsChecked);
        Assert.Equal("mountain", picked.Value);
        Assert.Equal("1200", ((IHtmlInputElement)page.QuerySelector("#field-altitude")!).Value);
        Assert.EndsWith("/kitchens?kitchen=mountain", page.QuerySelector(".also a")!.GetAttribute("href"), StringComparison.Ordinal);
        Assert.Equal($"./doughwright rehearse {desk.Bench.Shelf.RecipeTexts.FileOf("potato-rolls")} --kitchen mountain", page.QuerySelector(".same code")!.TextContent);
    }

    /// <summary>135 g of the milk boil and 226 g go in at 20 °C: each is told, and neither is said of all of it.</summary>
    [Fact]
    public async Task WhatIsTrueOfOneLine_IsNotSaidOfARowThatAddsUpSeveral()
    {
        var page = await desk.Page("/recipes/tin-loaf");
        var milk = Assert.Single(page.QuerySelectorAll(".formula tbody tr"), row => row.QuerySelector("th")!.TextContent.StartsWith("Milk", StringComparison.Ordinal));
        Assert.Equal("Milk", milk.QuerySelector("th")!.TextContent);
        Assert.Equal("20 (100)", milk.LastElementChild!.TextContent);
        var rolls = await desk.Page("/recipes/potato-rolls?kitchen=winter-cottage&dough=26C&free=potato,scald");
        var potato = Assert.Single(rolls.QuerySelectorAll(".formula tbody tr"), row => row.QuerySelector("th")!.TextContent.StartsWith("Potato", StringComparison.Ordinal));
        Assert.Contains("boiled", potato.QuerySelector("th")!.TextContent, StringComparison.Ordinal);
        Assert.NotEqual("–", potato.LastElementChild!.TextContent);
    }

    /// <summary>What moved in a fold is marked as in any other row: when it is due on the clock, and how long after its step began.</summary>
    [Fact]
    public async Task FoldThatMoved_IsMarked()
    {
        static IElement Fold(IHtmlDocument page) => page.QuerySelectorAll(".method tbody tr").First(row => row.TextContent.Contains("Fold", StringComparison.Ordinal));
        var away = Fold(await desk.Page("/recipes/hearth-loaf?kitchen=summer"));
        Assert.True(away.QuerySelectorAll(".moved").Length >= 2, away.OuterHtml);
        Assert.Empty(Fold(await desk.Page("/recipes/hearth-loaf")).QuerySelectorAll(".moved"));
    }

    /// <summary>Where nobody knows how long all takes because a step has no end here, the answer says which, and what it settles at.</summary>
    [Fact]
    public async Task StepWithoutAnEnd_StandsInTheAnswer()
    {
        var page = await desk.Page("/recipes/potato-rolls?kitchen=summer");
        var answer = page.QuerySelector(".answer")!.TextContent.Replace('\u00a0', ' ');
        Assert.Contains("“Mash and cool” never ends here: it settles at 30.0 °C.", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("never ends here", (await desk.Page("/recipes/potato-rolls")).QuerySelector(".answer")!.TextContent, StringComparison.Ordinal);
    }

    /// <summary>The loaf is baked without the fan in a kitchen whose oven is said to run with it.</summary>
    [Fact]
    public async Task ModeThatTheRecipeAsksFor_IsSaidToBeAsked()
    {
        Assert.Contains("static, as the recipe asks", (await desk.Page("/recipes/hearth-loaf")).QuerySelector(".answer")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("as the recipe asks", (await desk.Page("/recipes/potato-rolls")).QuerySelector(".answer")!.TextContent, StringComparison.Ordinal);
    }

    /// <summary>After each mix the dough has another temperature.</summary>
    [Fact]
    public async Task ADoughThatIsMixedTwice_HasATemperatureAfterEach()
    {
        desk.Bench.WriteRecipe("soaked", TwoMixes.Text);
        var page = await desk.Page("/recipes/soaked");
        var facts = page.QuerySelectorAll("[aria-labelledby=sec-heat] .bigfact data").Select(fact => fact.GetAttribute("data-of")).ToArray();
        Assert.Equal(["steps.stir.endCelsius", "components.dough.mixedCelsius"], facts);
    }

    /// <summary>A kitchen may be called "home": the recipe's own has no name that a file can have.</summary>
    [Fact]
    public async Task AKitchenCalledHome_IsNotTheRecipesOwn()
    {
        desk.Bench.WriteKitchen("home", "doughwright: 1\nkitchen: Ours\nair: 16 C\n");
        var page = await desk.Page("/recipes/potato-rolls?kitchen=home");
        Assert.Equal("home", Assert.Single(page.QuerySelectorAll<IHtmlInputElement>("input[name=kitchen]"), radio => radio.IsChecked).Value);
        Assert.Equal("", page.QuerySelector<IHtmlInputElement>("input[name=kitchen]")!.Value);
        Assert.Equal("16", page.QuerySelector<IHtmlInputElement>("#field-air")!.Value);
    }

    [Theory]
    [InlineData("MOUNTAIN")]
    [InlineData("kestrel cottage, heated")]
    public async Task AKitchenHoweverItIsAskedFor_IsPicked(string asked) => Assert.Equal(
        "mountain",
        Assert.Single((await desk.Page("/recipes/potato-rolls?kitchen=" + Uri.EscapeDataString(asked))).QuerySelectorAll<IHtmlInputElement>("input[name=kitchen]"), radio => radio.IsChecked).Value);

    [Fact]
    public async Task HandsOfTheMethod_AddUpToTheTotal()
    {
        foreach (var recipe in new[] { "hearth-loaf", "night-boat-rye", "pilot-ring", "potato-rolls", "quayside-pan-bread", "tin-loaf" })
        {
            var page = await desk.Page($"/recipes/{recipe}");
            var hands = page.QuerySelectorAll(".method tbody .hn").Select(cell => cell.FirstChild is IElement figure ? int.Parse(figure.TextContent, System.Globalization.CultureInfo.InvariantCulture) : 0);
            Assert.Equal(page.QuerySelector(".method tfoot .hn data")!.TextContent, hands.Sum().ToString(System.Globalization.CultureInfo.InvariantCulture));
        }
    }

    [Fact]
    public async Task EveryTimeThatEndsByACue_StandsWithIt()
    {
        var answer = (await desk.Page("/recipes/potato-rolls?kitchen=winter-cottage")).QuerySelector(".answer")!.TextContent;
        foreach (var step in Asking.Bench.Rolls.Steps.Where(step => step.Kind is Doughwright.Engine.Recipes.StepKind.Bulk or Doughwright.Engine.Recipes.StepKind.Proof or Doughwright.Engine.Recipes.StepKind.Bake))
        {
            Assert.Contains(step.Cue!, answer, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task WhatAnAuthorWrites_IsNeverMarkup()
    {
        desk.Bench.WriteRecipe("hostile", File.ReadAllText(House.PotatoRolls)
            .Replace("title: Potato rolls", "title: \"<script>alert(1)</script> 'Rolls' & \\\"more\\\"\"", StringComparison.Ordinal)
            .Replace("name: Boil", $"name: \"<img src=x onerror=alert(1)> {Long}\"", StringComparison.Ordinal)
            .Replace("cue: golden all over", "cue: \"</i></section><script>1</script>\"", StringComparison.Ordinal)
            .Replace("    butter: 50 g, soft", $"    \"<b>{Long}\": 50 g", StringComparison.Ordinal));
        var page = await desk.Page("/recipes/hostile");
        // Bold with a direction of its own is a value that the desk set off in a note.
        Assert.Empty(page.QuerySelectorAll("main script, main img, main b:not([dir=auto]), [onerror]"));
        Assert.Contains("<script>1</script>", page.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ATextThatCannotBeUnderstood_ShowsItsFindings_AndNoFigure()
    {
        desk.Bench.WriteRecipe("torn", "doughwright: 1\ntitle: Torn\nnonsense here\n");
        var page = await desk.Page("/recipes/torn");
        Assert.NotEmpty(page.QuerySelectorAll(".finds li"));
        Assert.Empty(page.QuerySelectorAll("data[data-of]"));
    }

    [Fact]
    public async Task ARecipeThatIsNotThere_IsNotFound()
    {
        Assert.Equal(HttpStatusCode.NotFound, await desk.Status("/recipes/nothing"));
        Assert.Equal(HttpStatusCode.NotFound, await desk.Status("/recipes/..%2Fkitchens%2Fmountain"));
    }

    [Fact]
    public async Task FindingsOnTheStrip_AreNumberedAsInTheList()
    {
        var page = await desk.Page("/recipes/potato-rolls?kitchen=winter-cottage");
        var listed = page.QuerySelectorAll(".finds > li").Length;
        var flags = page.QuerySelectorAll(".strip-wide .flagt").Select(flag => int.Parse(flag.TextContent, System.Globalization.CultureInfo.InvariantCulture)).ToArray();
        Assert.NotEmpty(flags);
        Assert.All(flags, flag => Assert.InRange(flag, 1, listed));
    }

    [GeneratedRegex(@"\brecipe\.[a-z]")]
    private static partial Regex KeyOfWords();
}

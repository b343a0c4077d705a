using System.Globalization;
using System.Net;
using AngleSharp.Html.Dom;
using Doughwright.App.Desk.Drafting;
using Doughwright.App.Desk.Ingredients;
using Doughwright.App.Desk.Kitchens;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Ingredients;

/// <summary>Own ingredients of the book: written on a form, taken into recipes, brought up to date there.</summary>
public sealed class OwnIngredientTests : IDisposable
{
    private static readonly (string, string)[] Mallow =
        [("ingredient", "cottage mallow"), ("counts-as", "sugar"), ("total-carbohydrate", "81"), ("of-which-sugars", "58"), ("fibre", "0"), ("fat", "0"), ("protein", "2"), ("sodium", "80"), ("allergens", "none")];

    private readonly Scratch scratch = Scratch.WithTheShipped();

    private readonly Voice voice = new(Words.Shipped, MeasureSystem.Metric);

    [Fact]
    public void EveryKeyOfTheText_IsAField()
    {
        Assert.Equal(IngredientText.Keys.Order(StringComparer.Ordinal), OwnForm.Plan.Keys.Order(StringComparer.Ordinal));
        Assert.Equal(KitchenText.Keys.Order(StringComparer.Ordinal), KitchenForm.Plan.Keys.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Label_IsWritten_WithTheFiguresThatARecipeGets()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var answer = await Write(desk, Mallow);
        Assert.Equal((HttpStatusCode.SeeOther, "/larder/own/cottage-mallow"), (answer.Status, answer.Location));
        var page = await desk.Page(answer.Location!);
        var recipe = Lemon("cottage mallow: 20 g");
        var own = IngredientText.Read(Text("cottage-mallow")).Own!;
        var held = RecipeText.Read(recipe + "own:\n  cottage mallow:\n" + string.Concat(IngredientText.Write(own).Split('\n').Skip(2).Where(line => line.Length > 0).Select(line => $"    {line}\n"))).Recipe!.Own[0];
        Assert.Equal(held.Ingredient.Composition, own.Ingredient.Composition);
        var shown = page.QuerySelectorAll("table.holds data").ToDictionary(figure => figure.GetAttribute("data-of")!, figure => double.Parse(figure.GetAttribute("value")!, CultureInfo.InvariantCulture));
        Assert.Equal(held.Ingredient.Composition.Water!.Value, shown["composition.water"]);
        Assert.Equal(58, shown["composition.sugars"]);
        Assert.Contains("Not known: lactose and ash.", page.QuerySelector("#main")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("cottage mallow", (await desk.Page("/larder?words=mallow")).QuerySelector(".found h2")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("cottage mallow", (await desk.Page("/larder")).QuerySelector("[aria-labelledby=own]")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task EveryRefusedField_SaysSoInItsPlace_AndKeepsWhatWasTyped()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var answer = await Write(desk, [("ingredient", ""), ("fat", "much"), ("100-ml-weigh", "3 g"), ("salt", "-1"), ("allergens", "moonlight"), ("absorption", "300 %"), ("lot", "<script>alert(1)</script>")]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        foreach (var field in new[] { "ingredient", "counts-as", "fat", "100-ml-weigh", "salt", "allergens", "absorption" })
        {
            Assert.Equal("true", answer.Page.GetElementById(field)!.GetAttribute("aria-invalid"));
            Assert.NotEmpty(answer.Page.GetElementById(field + "-why")!.TextContent.Trim());
        }

        Assert.Null(answer.Page.GetElementById("protein")!.GetAttribute("aria-invalid"));
        Assert.Equal("much", ((IHtmlInputElement)answer.Page.GetElementById("fat")!).Value);
        Assert.Equal("<script>alert(1)</script>", ((IHtmlInputElement)answer.Page.GetElementById("lot")!).Value);
        Assert.DoesNotContain(answer.Page.Scripts, script => script.Text.Contains("alert", StringComparison.Ordinal));
        Assert.Empty(scratch.Folder.IngredientTexts.Names());
    }

    [Fact]
    public async Task WhatWasTyped_IsShownAsItWasTyped()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var answer = await Write(desk, [("ingredient", "mill flour"), ("counts-as", "flour"), ("carbohydrate", "72"), ("protein", "11.25"), ("ash", "0.55")]);
        var page = await desk.Page(answer.Location!);
        var shown = page.QuerySelectorAll("table.holds tbody tr").ToDictionary(row => row.QuerySelector("th")!.TextContent.Trim(), row => row.QuerySelector("td")!.TextContent.Trim().Replace('\u00a0', ' '));
        Assert.Equal("72.0 %", shown["Carbohydrate without its fibre"]);
        Assert.Equal(("11.25 %", "0.55 %"), (shown["Protein"], shown["Ash"]));
        Assert.DoesNotContain("Carbohydrate", shown.Keys);
        Assert.Contains("carbohydrate with its fibre", page.QuerySelector("#main")!.TextContent, StringComparison.Ordinal);
    }

    /// <summary>A long form says on top what is not taken, and leads there.</summary>
    [Fact]
    public async Task RefusedFields_AreNamedOnTop_EachOneLinkAway()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var answer = await Write(desk, [("ingredient", "x"), ("fat", "much"), ("ash", "-1")]);
        var links = answer.Page.QuerySelectorAll(".summed a").Select(link => (link.TextContent, link.GetAttribute("href"))).ToArray();
        Assert.Equal([("Counts as", "/larder/new#counts-as"), ("Fat", "/larder/new#fat"), ("Ash", "/larder/new#ash")], links);
        Assert.Empty((await desk.Page("/larder/new")).QuerySelectorAll(".summed"));
    }

    [Fact]
    public async Task SameNameTwice_IsRefused()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        await Write(desk, Mallow);
        var again = await Write(desk, [.. Mallow[1..], ("ingredient", "Cottage  Mallow")]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, again.Status);
        Assert.Contains("already", again.Page.GetElementById("ingredient-why")!.TextContent, StringComparison.Ordinal);
        Assert.Single(scratch.Folder.IngredientTexts.Names());
    }

    [Fact]
    public async Task IngredientThatWasChangedMeanwhile_SaysWhatIsThereAndHere_AndKeepsWhatWasTyped()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        await Write(desk, Mallow);
        var form = (IHtmlFormElement)(await desk.Page("/larder/own/cottage-mallow/change")).QuerySelector("form.paperform")!;
        Put("cottage-mallow", Text("cottage-mallow").Replace("fibre: 0 g", "fibre: 1 g", StringComparison.Ordinal));
        var refused = await desk.Send(form, [.. Mallow.Select(field => field.Item1 == "protein" ? ("protein", "3") : field)]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Contains("as it is there: 1 g. Here: 0 g", refused.Words, StringComparison.Ordinal);
        Assert.Contains("as it is there: 2 g. Here: 3 g", refused.Words, StringComparison.Ordinal);
        Assert.Equal("3", ((IHtmlInputElement)refused.Page.QuerySelector("#protein")!).Value);
        Assert.Contains("fibre: 1 g", Text("cottage-mallow"), StringComparison.Ordinal);
        var again = (IHtmlFormElement)refused.Page.QuerySelector("form.paperform")!;
        Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(again, [.. Mallow.Select(field => field.Item1 switch { "protein" => ("protein", "3"), "fibre" => ("fibre", "1"), _ => field })])).Status);
        Assert.Contains("protein: 3 g", Text("cottage-mallow"), StringComparison.Ordinal);
        Assert.Contains("fibre: 1 g", Text("cottage-mallow"), StringComparison.Ordinal);
    }

    [Fact]
    public void LineWithItsName_TakesItIntoTheRecipesText_AndOnlyIt()
    {
        Put("cottage-mallow", "doughwright: 1\ningredient: cottage mallow\ncounts as: sugar\ntotal carbohydrate: 81 g\n");
        Put("other", "doughwright: 1\ningredient: harbour oat drink\ncounts as: liquid\nfat: 1.5 g\n");
        var manuscript = Manuscript.Open("potato-rolls", scratch.Folder, new OpenDrafts(), voice)!;
        Assert.True(manuscript.Change("x", "", recipe => LineEdits.Add(recipe, "dough", "cottage mallow 20 g")));
        var read = RecipeText.Read(scratch.Text("potato-rolls"));
        Assert.DoesNotContain(read.Findings, finding => finding.NotUnderstood);
        Assert.Equal("cottage mallow", Assert.Single(read.Recipe!.Own).Name);
        Assert.Equal(81, Doughwright.Engine.Formulas.Formula.Balance(read.Recipe, Larder.Shipped).FindComponent("dough")!.Lines[^1].Composition.Carbohydrate);
        manuscript.Undo();
        Assert.Empty(RecipeText.Read(scratch.Text("potato-rolls")).Recipe!.Own);
    }

    /// <summary>Else one change in the larder would change recipes nobody has open.</summary>
    [Fact]
    public void NameThatARecipeHadBefore_MeansWhatItMeant()
    {
        Put("butter", "doughwright: 1\ningredient: butter\ncounts as: fat\nfat: 60 g\n");
        var manuscript = Manuscript.Open("potato-rolls", scratch.Folder, new OpenDrafts(), voice)!;
        Assert.True(manuscript.Change("x", "", recipe => LineEdits.Weigh(recipe, "dough", "salt", "8")));
        Assert.Empty(RecipeText.Read(scratch.Text("potato-rolls")).Recipe!.Own);
    }

    [Fact]
    public async Task OlderVersions_AreListed_AndBroughtUpToDateOneByOne_AsStatesOfTheRecipe()
    {
        scratch.Put("first", Lemon("mill flour: 200 g", "11 g", "60 %")).Put("second", Lemon("mill flour: 300 g", "11 g", "60 %")).Put("named", Lemon("mill flour: 100 g"));
        Put("mill-flour", "doughwright: 1\ningredient: mill flour\ncounts as: flour\nprotein: 12 g\nabsorption: 62.5 %\n");
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page("/larder/own/mill-flour");
        Assert.Equal(["/recipes/first", "/recipes/named", "/recipes/second"], page.QuerySelectorAll(".offs h3 a").Select(link => link.GetAttribute("href")!).Order(StringComparer.Ordinal));
        Assert.Contains("2.5 points more", page.QuerySelector(".offs")!.TextContent, StringComparison.Ordinal);
        var before = scratch.Folder.RecipeTexts.Find("first")!;
        var button = ("bring", FormattableString.Invariant($"{before.State}:first"));
        Assert.Contains(button.Item2, page.QuerySelectorAll(".offs button").Select(one => one.GetAttribute("value")));
        var form = (IHtmlFormElement)page.QuerySelector("form:has(.offs)")!;
        Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(form, button)).Status);
        Assert.Equal(12, RecipeText.Read(scratch.Text("first")).Recipe!.Own[0].Ingredient.Composition.Protein);
        Assert.Equal(11, RecipeText.Read(scratch.Text("second")).Recipe!.Own[0].Ingredient.Composition.Protein);
        Assert.Contains("mill flour", scratch.Folder.RecipeTexts.Find("first")!.Undo!, StringComparison.Ordinal);
        Assert.Equal(2, (await desk.Page("/larder/own/mill-flour")).QuerySelectorAll(".offs li").Length);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await desk.Send(form, ("bring", FormattableString.Invariant($"{before.State - 1}:second")))).Status);
        Assert.Equal(2, scratch.Folder.Book.Papers.States(PaperSort.Recipe, "first").Count);
        Assert.Single(scratch.Folder.Book.Papers.States(PaperSort.Recipe, "second"));
    }

    [Fact]
    public async Task Change_IsAState_UndoneAndRedone_AndTakenAwayAndBack()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        await Write(desk, Mallow);
        var change = await desk.Page("/larder/own/cottage-mallow/change");
        Assert.Equal("81", ((IHtmlInputElement)change.GetElementById("total-carbohydrate")!).Value);
        Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send((IHtmlFormElement)change.QuerySelector("form.paperform")!, [.. Mallow, ("piece", "7")])).Status);
        Assert.Contains("piece: 7 g", Text("cottage-mallow"), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await desk.Send((IHtmlFormElement)change.QuerySelector("form.paperform")!, [.. Mallow, ("piece", "9")])).Status);
        var page = await desk.Page("/larder/own/cottage-mallow");
        await desk.Send((IHtmlFormElement)page.QuerySelector("form.stepping")!, ("step", "back"));
        Assert.DoesNotContain("piece", Text("cottage-mallow"), StringComparison.Ordinal);
        page = await desk.Page("/larder/own/cottage-mallow");
        await desk.Send((IHtmlFormElement)page.QuerySelector("form.stepping")!, ("step", "on"));
        Assert.Contains("piece: 7 g", Text("cottage-mallow"), StringComparison.Ordinal);
        var away = await desk.Send((IHtmlFormElement)page.QuerySelectorAll("form.stepping")[^1]);
        Assert.Equal("/larder?taken=cottage-mallow", away.Location);
        var back = await desk.Send((IHtmlFormElement)(await desk.Page(away.Location!)).QuerySelector("form.stepping")!, ("back", "cottage-mallow"));
        Assert.Equal("/larder/own/cottage-mallow", back.Location);
    }

    [Fact]
    public async Task TwoWeighings_AreToldWithWhatTheyRestOn()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        await Write(desk, [("ingredient", "brown butter"), ("counts-as", "fat"), ("made-from", "unsalted butter"), ("weighed", "250 g before and 206 g after")]);
        var page = (await desk.Page("/larder/own/brown-butter")).QuerySelector("#main")!.TextContent;
        Assert.Contains("250\u00a0g came to 206\u00a0g", page, StringComparison.Ordinal);
        Assert.Contains("only water came or went", page, StringComparison.Ordinal);
        await Write(desk, [("ingredient", "mill flour"), ("counts-as", "flour"), ("protein", "12"), ("dried", "20 g before and 17 g after")]);
        page = (await desk.Page("/larder/own/mill-flour")).QuerySelector("#main")!.TextContent;
        Assert.Contains("Read to 1\u00a0g, it lies between 10.3\u00a0% and 19.5\u00a0%.", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task HostileText_InTheBook_IsText()
    {
        Put("bad", "doughwright: 1\ningredient: <script>alert(1)</script>\ncounts as: sugar\nlot: <img src=x onerror=alert(2)>\nfat: 1 g\n");
        Put("worse", "not an ingredient at all <script>alert(3)</script>");
        await using var desk = await LiveDesk.On(scratch.Data);
        foreach (var address in new[] { "/larder", "/larder/own/bad", "/larder/own/worse", "/larder/own/bad/change", "/larder/own/worse/change", "/larder?words=script" })
        {
            var page = await desk.Page(address);
            Assert.DoesNotContain(page.Scripts, script => script.Text.Contains("alert", StringComparison.Ordinal));
            Assert.Empty(page.QuerySelectorAll("[onerror]"));
        }
    }

    [Theory]
    [InlineData("/larder/own/nobody")]
    [InlineData("/larder/own/nobody/change")]
    [InlineData("/kitchens/nobody/change")]
    public async Task NoSuchPaper_IsNotFound(string address)
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Equal(HttpStatusCode.NotFound, (await desk.Get(address)).StatusCode);
    }

    public void Dispose() => scratch.Dispose();

    private static string Lemon(string line, string? protein = null, string? absorption = null) =>
        $"doughwright: 1\ntitle: Lemon\nhome:\n  air: 21 C\nparts:\n  dough:\n    {line}\n    strong white flour: 300 g\n    water: 200 g\n"
        + (protein is null ? "" : $"own:\n  mill flour:\n    counts as: flour\n    protein: {protein}\n    absorption: {absorption}\n");

    private void Put(string name, string text) => Shelves.Put(scratch.Folder.IngredientTexts, name, text);

    private string Text(string name) => System.Text.Encoding.UTF8.GetString(scratch.Folder.IngredientTexts.Read(name)!);

    private static async Task<LiveDesk.Answer> Write(LiveDesk desk, params (string, string)[] typed) =>
        await desk.Send((IHtmlFormElement)(await desk.Page("/larder/new")).QuerySelector("form.paperform")!, typed);
}

using System.Globalization;
using System.Net;
using AngleSharp.Html.Dom;
using Dapper;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Book.Papers;

namespace Doughwright.App.Tests.Desk.TheBook;

/// <summary>
/// While the book cannot be written, every form that would write in it is answered on its own page with the reason, and nothing is changed; the same form is carried out as soon
/// as the book can be written again.
/// </summary>
public sealed class WithoutWritingTests : IDisposable
{
    private const string Rolls = "/recipes/potato-rolls";
    private const string Label = "|counts-as|sugar|total-carbohydrate|81|of-which-sugars|58|fibre|0|fat|0|protein|2|sodium|80|allergens|none";
    private const string Mallow = "doughwright: 1\ningredient: cottage mallow\ncounts as: sugar\ntotal carbohydrate: 81 g\n";

    private readonly Scratch scratch = Scratch.WithTheShipped();

    private Doughwright.Book.AuthorsBook Book => scratch.Folder.Book;

    public void Dispose() => scratch.Dispose();

    /// <param name="page">On which the form stands.</param>
    /// <param name="form">By its name.</param>
    /// <param name="typed">Fields and values, parted by strokes; the form's first button is pressed.</param>
    [Theory]
    [InlineData(Rolls + "/states", "keep", "name|first bake|note|tight crumb")]
    [InlineData(Rolls + "/states", "keep", "name|given|note||published|yes")]
    [InlineData(Rolls + "/states", "back", "")]
    [InlineData(Rolls + "/states", "correct", "kept|1|text|30 g of sugar|place|the card")]
    [InlineData(Rolls + "/states", "make", "")]
    [InlineData(Rolls + "/standing", "standing", "standing|trying")]
    [InlineData("/larder", "listed", "")]
    [InlineData("/larder?taken=sold-out", "back", "")]
    [InlineData("/larder/new", "own", "ingredient|mill syrup" + Label)]
    [InlineData("/larder/own/cottage-mallow", "away", "")]
    [InlineData("/larder/own/cottage-mallow", "step", "")]
    [InlineData("/larder/own/cottage-mallow/change", "own", "ingredient|cottage mallow|piece|9" + Label)]
    [InlineData("/kitchens", "move", "")]
    [InlineData("/kitchens/new", "kitchen", "kitchen|the cellar|air|15")]
    [InlineData("/notes", "move", "")]
    [InlineData("/notes", "begin", "title|Why salt goes in late")]
    [InlineData("/notes/scalding", "write", "text|# Scalding\n\nOnce more.\n")]
    [InlineData("/new", "new", "title|A loaf|line|bread flour 500 g")]
    public async Task AForm_IsToldWhyInItsPlace_AndCarriedOutLater(string page, string form, string typed)
    {
        Fill();
        await using var desk = await LiveDesk.On(scratch.Data);
        var sent = (IHtmlFormElement)(await desk.Page(page)).QuerySelector($"form:has(input[name=_handler][value={form}])")!;
        var fields = Fields(sent, typed);
        var before = Changes();
        Writing(false);
        var refused = await desk.Send(sent, fields);
        Writing(true);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Contains("readonly database", refused.Words, StringComparison.Ordinal);
        Assert.NotNull(refused.Page.QuerySelector($"form:has(input[name=_handler][value={form}])"));
        Assert.Equal(before, Changes());

        Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(sent, fields)).Status);
        Assert.NotEqual(before, Changes());
    }

    /// <summary>Something of everything: a recipe with two states and a published one with a correction, own ingredients changed and taken away.</summary>
    private void Fill()
    {
        scratch.Put("potato-rolls", scratch.Text("potato-rolls") + "# changed\n");
        var kept = Book.Kept.Keep(PaperSort.Recipe, "potato-rolls", scratch.Folder.RecipeTexts.Find("potato-rolls")!.State, "given out", "", published: true)!;
        Assert.Equal(1, kept.Id);
        Assert.True(Book.Corrections.Add(kept.Id, "30 g of sugar, not 40", "the printed card"));
        Shelves.Put(scratch.Folder.IngredientTexts, "cottage-mallow", Mallow);
        Shelves.Put(scratch.Folder.IngredientTexts, "cottage-mallow", Mallow + "piece: 7 g\n");
        Shelves.Put(scratch.Folder.IngredientTexts, "sold-out", Mallow.Replace("cottage mallow", "sold out", StringComparison.Ordinal));
        Shelves.Put(scratch.Folder.IngredientTexts, "sold-too", Mallow.Replace("cottage mallow", "sold too", StringComparison.Ordinal));
        Assert.True(scratch.Folder.IngredientTexts.TakeAway("sold-out"));
        Assert.True(scratch.Folder.IngredientTexts.TakeAway("sold-too"));
    }

    private static (string, string)[] Fields(IHtmlFormElement form, string typed)
    {
        var words = typed.Split('|');
        var button = form.QuerySelectorAll("button[name]").Cast<IHtmlButtonElement>().Select(one => (one.Name!, one.Value)).Take(1);
        return [.. button, .. typed.Length == 0 ? [] : words.Chunk(2).Select(pair => (pair[0], pair[1]))];
    }

    private string Changes() => Book.Opened.Use(open => string.Join('\n', open.Query<(string, long, string?)>("SELECT sort || ' ' || name, now, taken_away FROM paper ORDER BY id"))
        + string.Create(CultureInfo.InvariantCulture, $"{open.ExecuteScalar<long>("SELECT total_changes()")}"));

    private void Writing(bool may) => Book.Opened.Use(open => open.Execute("PRAGMA query_only = " + (may ? "OFF" : "ON")));
}

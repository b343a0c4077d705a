using System.Net;
using AngleSharp.Html.Dom;
using Doughwright.App.Desk.Drafting;
using Doughwright.App.Desk.Drafting.Views;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Ingredients;

/// <summary>From a line that names what the larder does not know to where an ingredient is written down, and back to the line.</summary>
public sealed class OwnForALineTests() : OnADesk(Scratch.WithTheShipped())
{
    private const string Address = "/larder/new?called=harbour%20dust&recipe=potato-rolls&part=dough";

    private static IHtmlFormElement Form(IHtmlDocument page) => (IHtmlFormElement)page.QuerySelector("form.paperform")!;

    [Theory]
    [InlineData("30 g harbour dust")]
    [InlineData("harbour dust 30 g, sifted")]
    [InlineData("harbour dust")]
    public void LastRow_LeadsThere_WithTheNameAlone(string typed)
    {
        var recipe = Engine.TextForm.RecipeText.Read(Scratch.Text("potato-rolls")).Recipe!;
        var last = OfferView.All(recipe, "dough", typed, new(Words.Shipped, MeasureSystem.Metric)).LastOrDefault();
        if (typed.Contains("30 g", StringComparison.Ordinal))
        {
            Assert.Equal("harbour dust", last!.Own);
            Assert.Contains("“harbour dust”", last.Brings, StringComparison.Ordinal);
        }
        else
        {
            // As long as no amount is typed there is no line yet.
            Assert.Null(last?.Own);
        }
    }

    [Fact]
    public async Task Form_KnowsTheName_LeadsBackToTheLine_AndGoesThereOnceItIsWritten()
    {
        var page = await Desk.Page(Address);
        Assert.Equal("harbour dust", ((IHtmlInputElement)page.GetElementById("ingredient")!).Value);
        Assert.Equal("/recipes/potato-rolls/write#add-dough", page.QuerySelector(".head .btn")!.GetAttribute("href"));
        var refused = await Desk.Send(Form(page), ("ingredient", "harbour dust"), ("counts-as", ""));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Equal("/recipes/potato-rolls/write#add-dough", refused.Page.QuerySelector(".head .btn")!.GetAttribute("href"));
        var written = await Desk.Send(Form(refused.Page), ("ingredient", "harbour dust"), ("counts-as", "sugar"), ("total-carbohydrate", "81"));
        Assert.Equal((HttpStatusCode.SeeOther, "/recipes/potato-rolls/write#add-dough"), (written.Status, written.Location));
        Assert.Equal(["harbour-dust"], Scratch.Folder.IngredientTexts.Names());
    }

    [Theory]
    [InlineData("/larder/new?called=x&recipe=nobody&part=dough")]
    [InlineData("/larder/new?called=x&recipe=..%2F..&part=dough")]
    [InlineData("/larder/new?called=x&recipe=potato-rolls&part=%22%3E%3Cscript%3E")]
    [InlineData("/larder/new?called=x&recipe=potato-rolls")]
    [InlineData("/larder/new?called=x")]
    public async Task WithoutSuchALine_ItIsTheFormByItself(string address)
    {
        var page = await Desk.Page(address);
        Assert.Equal("/larder", page.QuerySelector(".head .btn")!.GetAttribute("href"));
        var written = await Desk.Send(Form(page), ("ingredient", "x"), ("counts-as", "sugar"), ("total-carbohydrate", "81"));
        Assert.Equal("/larder/own/x", written.Location);
    }

    [Fact]
    public void LineThatWasLeft_Waits_UntilItIsTaken()
    {
        var lines = new LeftLines();
        lines.Leave("potato-rolls", "dough", "harbour dust 30 g");
        Assert.Equal(["harbour dust 30 g", "harbour dust 30 g", "", ""], new[] { lines.Of("potato-rolls", "dough"), lines.Of("potato-rolls", "dough"), lines.Of("potato-rolls", "wash"), lines.Of("tin-loaf", "dough") });
        lines.LetGo("potato-rolls", "dough");
        Assert.Equal("", lines.Of("potato-rolls", "dough"));
    }
}

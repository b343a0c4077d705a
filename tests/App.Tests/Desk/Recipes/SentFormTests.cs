using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace Doughwright.App.Tests.Desk.Recipes;

/// <summary>The sentence in a browser without script: a form, sent as it stands, leads to the same address that the desk writes with one.</summary>
public sealed class SentFormTests(OpenRecipes desk) : IClassFixture<OpenRecipes>
{
    [Theory]
    [InlineData("", "air", "17", "?air=17C&dough=26C&free=scald,potato")]
    [InlineData("?measures=us", "air", "63", "?air=63F&dough=26C&free=scald,potato&measures=us")]
    [InlineData("?measures=us", "altitude", "4000", "?altitude=4000ft&dough=26C&free=scald,potato&measures=us")]
    [InlineData("?kitchen=mountain&at=butter=20C&as-written", "oven", "static", "?kitchen=mountain&oven=static&at=butter%3D20C&as-written")]
    [InlineData("?air=17C@22:00,21C@07:00&start=22:00&as-written", "tap", "9", "?air=17C@22:00,21C@07:00&start=22:00&tap=9C&as-written")]
    [InlineData("?kitchen=winter-cottage&dough=26C&free=scald,potato", "dough", "25", "?kitchen=winter-cottage&dough=25C&free=scald,potato")]
    [InlineData("?kitchen=winter-cottage&dough=26C&free=scald,potato", "free", "", "?kitchen=winter-cottage&as-written")]
    [InlineData("?kitchen=winter-cottage&as-written", "free", "scald,potato", "?kitchen=winter-cottage&dough=26C&free=scald,potato")]
    [InlineData("?air=17C&as-written", "air", "", "?air=&as-written")]
    [InlineData("", "air", "hot", "?air=hot")]
    [InlineData("", "kitchen", "winter-cottage", "?kitchen=winter-cottage&dough=26C&free=scald,potato")]
    [InlineData("?kitchen=mountain&air=15C&measures=us", "kitchen", "", "?measures=us")]
    [InlineData("?kitchen=mountain&dough=25C&free=potato", null, "", "?kitchen=mountain&dough=25C&free=potato")]
    public async Task AForm_LeadsToTheAddressOfWhatItSets(string query, string? field, string value, string leadsTo)
    {
        var page = await desk.Page("/recipes/potato-rolls" + query);
        var form = page.QuerySelectorAll<IHtmlFormElement>(".kitchen form").Single(form => form.QuerySelector($"[name={field ?? "air"}]") is not null);
        Assert.NotNull(form.QuerySelector("noscript"));
        Assert.Equal("get", form.Method);
        Assert.Equal("/recipes/potato-rolls" + leadsTo, await desk.LeadsTo("/recipes/potato-rolls" + Sent(form, field, value)));
    }

    [Theory]
    [InlineData("?air=17", "17", "")]
    [InlineData("?air=63&measures=us", "63", "")]
    [InlineData("?air=abc", "abc", "true")]
    public async Task ABareNumberInAnAddress_IsInTheUnitOfItsField(string query, string shown, string invalid)
    {
        var field = (IHtmlInputElement)(await desk.Page("/recipes/potato-rolls" + query)).QuerySelector("#field-air")!;
        Assert.Equal(shown, field.Value);
        Assert.Equal(invalid, field.GetAttribute("aria-invalid") ?? "");
    }

    /// <summary>As a browser sends it, with one field filled in.</summary>
    private static string Sent(IHtmlFormElement form, string? field, string value)
    {
        var query = new StringBuilder("?");
        foreach (var input in form.QuerySelectorAll("input, select"))
        {
            var name = input.GetAttribute("name")!;
            if (input is IHtmlInputElement { Type: "radio", IsChecked: false } || (input is IHtmlInputElement { Type: "radio" } && name == field))
            {
                continue;
            }

            var stands = name == field ? value : input is IHtmlSelectElement choice ? choice.Value ?? "" : ((IHtmlInputElement)input).Value;
            query.Append(query.Length > 1 ? "&" : "").Append(name).Append('=').Append(Uri.EscapeDataString(stands));
        }

        return query.Append(field == "kitchen" ? $"&kitchen={value}" : "").ToString();
    }
}

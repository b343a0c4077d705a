using System.Globalization;
using System.Net;
using System.Text.Json.Nodes;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Doughwright.App.Desk.Readying;
using Doughwright.App.Tests.Desk.Shelf;

namespace Doughwright.App.Tests.Desk.Readying;

/// <summary>"What do I change to be ready at seven?" says on the desk what "ready" says on the command line.</summary>
public sealed class ReadyPageTests
{
    [Theory]
    [InlineData("potato-rolls", "14:00", "20:00", "")]
    [InlineData("potato-rolls", "22:00", "5:00", "mountain")]
    [InlineData("tin-loaf", "14:00", "20:00", "winter-cottage")]
    [InlineData("hearth-loaf", "14:00", "10:00", "summer")]
    [InlineData("night-boat-rye", "14:00", "11:00", "")]
    [InlineData("pilot-ring", "12:00", "13:00", "")]
    public async Task Page_SaysWhatTheCommandSays(string recipe, string start, string by, string kitchen)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        string[] asked = ["ready", scratch.Folder.RecipeTexts.FileOf(recipe), "--start", start, "--by", by, .. kitchen.Length > 0 ? ["--kitchen", kitchen] : Array.Empty<string>()];
        var command = Words(Output(asked));
        var json = JsonNode.Parse(Output([.. asked, "--json"]))!;
        var page = await desk.Page($"/recipes/{recipe}/ready?{(kitchen.Length > 0 ? $"kitchen={kitchen}&" : "")}start={start}&by={by}");

        var said = page.QuerySelectorAll(".answer, .readyways p, .readyways li").Select(part => Words(part.TextContent)).ToArray();
        Assert.True(said.Length > 3, $"{said.Length} sentences");
        Assert.All(said, sentence => Assert.Contains(sentence, command, StringComparison.Ordinal));
        var ways = json["ways"]!.AsArray();
        Assert.Equal(ways.Count, page.QuerySelectorAll(".readyways > section").Length);
        Assert.Equal(ways.All(way => way!["obstacle"] is not null), page.QuerySelector(".readytable") is null);

        var figures = page.QuerySelectorAll(".readytable data").ToArray();
        Assert.All(figures, figure => Assert.Equal(At(json, figure.GetAttribute("data-of")!), Value(figure), 1e-9));
        var shown = figures.Select(figure => figure.GetAttribute("data-of")).ToHashSet();
        Assert.Equal([], Wanted(json).Where(place => !shown.Contains(place)));
    }

    /// <summary>What a person chooses in the sentence and what an address says by hand come to one address.</summary>
    [Theory]
    [InlineData("start=22%3A00&by=7%3A00&later=0", "start=22:00&by=7:00")]
    [InlineData("start=22:00&by=7:00&later=1", "start=22:00&by=7:00%2B1d")]
    [InlineData("start=22&by=7.30&later=2&kitchen=summer", "kitchen=summer&start=22:00&by=7:30%2B2d")]
    [InlineData("start=22:00&by=7:00+1d", "start=22:00&by=7:00%2B1d")]
    [InlineData("by=7:00", "start=22:00&by=7:00")]
    public async Task WhatIsChosen_StandsInTheAddressAsTheCommandHasIt(string sent, string address)
    {
        Assert.Equal("?" + address, ReadyAsk.Completed("?" + sent));
        Assert.Null(ReadyAsk.Completed("?" + address));
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        using var answer = await desk.Get("/recipes/potato-rolls/ready?" + sent);
        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
        Assert.EndsWith("/recipes/potato-rolls/ready?" + address, answer.Headers.Location!.OriginalString, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("start=22:00&by=25:00", "25:00", "ready-by")]
    [InlineData("start=late&by=7:00", "late", "ready-start")]
    [InlineData("start=22:00&by=7:00%2B14d", "+14d", null)]
    [InlineData("start=22:00&start=21:00&by=7:00", "21:00", null)]
    [InlineData("start=&by=7:00", "When work starts", "ready-start")]
    public async Task WhatIsNoHour_IsRefusedWhereItStands_AndNothingIsAnswered(string query, string said, string? field)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page("/recipes/potato-rolls/ready?" + query);
        var alert = page.QuerySelector("[role=alert]")!;
        Assert.Contains(said, alert.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("--", alert.TextContent, StringComparison.Ordinal);
        Assert.Single(alert.QuerySelectorAll("li"));
        Assert.Equal(field is null ? [] : [field], page.QuerySelectorAll("[aria-invalid=true]").Select(input => input.Id));
        Assert.Null(page.QuerySelector(".readyways"));
    }

    /// <summary>The page of a recipe asks it in its own kitchen, and leads back to it as it was, dough and all.</summary>
    [Fact]
    public async Task RecipesPage_AsksIt_InTheSameKitchen()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        const string Set = "?kitchen=mountain&air=17C&dough=26C&free=potato,scald";
        var form = (IHtmlFormElement)(await desk.Page("/recipes/potato-rolls" + Set)).QuerySelector(".readypart form")!;
        Assert.Equal("get", form.Method);
        Assert.Equal(["start", "by", "later", "kitchen", "air", "dough", "free"], form.QuerySelectorAll("[name]").Select(field => field.GetAttribute("name")));
        Assert.All(form.QuerySelectorAll("input[type=text], select"), field => Assert.NotNull(form.QuerySelector($"label[for={field.Id}]")));

        var page = await desk.Page($"{form.GetAttribute("action")}{Set}&start=22:00&by=7:00");
        Assert.Null(page.QuerySelector("[role=alert]"));
        Assert.Contains("not kept as warm", page.QuerySelector("form .note")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("/recipes/potato-rolls" + Set[..Set.IndexOf("&dough", StringComparison.Ordinal)] + "&start=22:00" + Set[Set.IndexOf("&dough", StringComparison.Ordinal)..], page.QuerySelector(".head a.btn")!.GetAttribute("href"));
        Assert.EndsWith("book.db:potato-rolls --kitchen mountain --air 17C --start 22:00 --by 7:00", page.QuerySelector(".same code")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await desk.Get("/recipes/nobody/ready?start=22:00&by=7:00")).StatusCode);
    }

    private static IEnumerable<string> Wanted(JsonNode json) => json["ways"]!.AsArray().SelectMany((way, index) => way!["obstacle"] is not null ? [] : (string[])
    [
        $"ways.{index}.totalMinutes",
        .. way["doses"]!.AsArray().Select((_, dose) => $"ways.{index}.doses.{dose}.grams"),
        .. way["moves"]!.AsArray().Select((_, move) => $"ways.{index}.moves.{move}.minutes"),
        .. way["water"] is null ? Array.Empty<string>() : [$"ways.{index}.water.celsius", $"ways.{index}.water.doughCelsius"],
    ]);

    private static double Value(IElement figure) => double.Parse(figure.GetAttribute("value")!, CultureInfo.InvariantCulture);

    private static double At(JsonNode json, string place) =>
        (double)place.Split('.').Aggregate(json, (node, name) => node is JsonArray list ? list[int.Parse(name, CultureInfo.InvariantCulture)]! : node[name]!)!;

    private static string Output(string[] arguments)
    {
        using var output = new StringWriter();
        Assert.InRange(Cli.Run(arguments, Stream.Null, output, TextWriter.Null), 0, 1);
        return output.ToString();
    }

    /// <summary>One line, as the terminal's paragraphs are broken elsewhere.</summary>
    private static string Words(string text) => string.Join(' ', text.Split((char[])[' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries));
}

using System.Globalization;
using System.Net;
using System.Text.Json;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Doughwright.App.Tests.Desk.States;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Tests.Desk.Beside;

/// <summary>Two states of a recipe, or two recipes, side by side: what differs, what that does, and what is brought back.</summary>
public sealed class SidesPageTests : KeptRolls
{
    [Theory]
    [InlineData("")]
    [InlineData("winter-cottage")]
    public async Task TwoStates_SayWhatTheCommandSays(string kitchen)
    {
        var first = await KeepAndChange();
        var page = await Desk.Page($"{Sides}?left={first}&kitchen={kitchen}");
        var file = Scratch.Folder.RecipeTexts.FileOf("potato-rolls");
        var command = Run.Of(["compare", $"{file}@{first}", file, "--json", .. kitchen.Length > 0 ? ["--kitchen", kitchen] : Array.Empty<string>()]);
        Assert.Equal(0, command.ExitCode);
        using var json = JsonDocument.Parse(command.Output);
        var root = json.RootElement;
        Assert.Equal(
            root.GetProperty("differences").EnumerateArray().Select(difference => difference.GetProperty("what").GetString()),
            page.QuerySelectorAll(".changes2 tbody th").Select(row => row.TextContent));
        Assert.Equal(["Sugar (Dough)", "Bake: cue"], page.QuerySelectorAll(".changes2 tbody th").Select(row => row.TextContent));
        var rows = page.QuerySelectorAll(".comes tbody tr").ToArray();
        Assert.True(rows.Length > 10, $"{rows.Length} rows");
        Assert.All(rows, row =>
        {
            var of = row.GetAttribute("data-of")!.Split('.');
            var told = root.GetProperty(of[0]).EnumerateArray().Single(figure =>
                figure.GetProperty("figure").GetString() == of[1] && (of[0] == "formula" || figure.GetProperty("of").GetString() == string.Join('.', of.Skip(2))));
            Assert.Equal(Figures(told, "first", "second"), row.QuerySelectorAll("data").Select(data => double.Parse(data.GetAttribute("value")!, CultureInfo.InvariantCulture)));
        });
        Assert.Contains(kitchen, page.QuerySelector(".commandline code")!.TextContent, StringComparison.Ordinal);
    }

    /// <summary>More flour makes every other line a smaller share: the author changed one.</summary>
    [Fact]
    public async Task LinesThatWereNotTouched_StandUnderWhatMovesAlong()
    {
        var first = Now;
        Assert.Equal(HttpStatusCode.SeeOther, (await Desk.Send(Form(await Desk.Page(States), "keep"), ("name", "first"), ("note", ""))).Status);
        Scratch.Put("potato-rolls", Scratch.Text("potato-rolls").Replace("    strong white flour: 320 g", "    strong white flour: 480 g", StringComparison.Ordinal));
        var page = await Desk.Page($"{Sides}?left={first}");
        Assert.Equal(["Strong white flour (Dough)"], page.QuerySelectorAll(".changes2 tbody th").Select(row => row.TextContent));
        var along = page.QuerySelectorAll("details.along tbody th").Select(row => row.TextContent).ToArray();
        Assert.Contains("Butter (Dough)", along);
        Assert.Contains("Milk (Wash)", along);
        Assert.DoesNotContain("more differ", page.QuerySelector(".answer")!.TextContent, StringComparison.Ordinal);
        Assert.Empty((await Desk.Page($"{Sides}?left={Now}")).QuerySelectorAll("details.along"));
    }

    [Fact]
    public async Task RecipesOfOneTitle_AreToldApartByTheirNames()
    {
        foreach (var (name, sugar) in new[] { ("other-rolls", "31 g"), ("third-rolls", "32 g") })
        {
            Scratch.Put(name, Scratch.Text("potato-rolls").Replace("sugar: 30 g", $"sugar: {sugar}", StringComparison.Ordinal));
        }

        string[] alike = ["Potato rolls (other-rolls)", "Potato rolls (third-rolls)"];
        Assert.Subset((await Desk.Page(Sides)).QuerySelectorAll("select[name=left] option").Select(option => option.TextContent).ToHashSet(), alike.ToHashSet());
        var note = await Desk.Page("/notes/scalding");
        Assert.Subset(note.QuerySelectorAll("select[name=recipe] option").Select(option => option.TextContent).ToHashSet(), alike.Append("Potato rolls (potato-rolls)").ToHashSet());
        Assert.Contains("Potato rolls (other-rolls)", (await Desk.Page("/notes")).QuerySelector(".offs")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Ropewalk tin loaf", (await Desk.Page(Sides)).QuerySelectorAll("select[name=left] option").Select(option => option.TextContent));
    }

    [Fact]
    public async Task OneChangeBroughtBack_LeavesTheOtherAndTheComments()
    {
        var first = await KeepAndChange();
        var page = await Desk.Page($"{Sides}?left={first}");
        var button = page.QuerySelectorAll(".bring button").Single(one => one.TextContent.Contains("cue", StringComparison.Ordinal));
        var answer = await Desk.Send(Form(page, "take"), ("take", button.GetAttribute("value")!));
        Assert.Equal((HttpStatusCode.SeeOther, $"{Sides}?left={first}"), (answer.Status, answer.Location));
        Assert.Contains("golden all over", Scratch.Text("potato-rolls"), StringComparison.Ordinal);
        Assert.Contains("sugar: 60 g  # sweeter", Scratch.Text("potato-rolls"), StringComparison.Ordinal);
        Assert.Contains("golden all over", Scratch.Folder.RecipeTexts.Find("potato-rolls")!.Did, StringComparison.Ordinal);
        Assert.Single((await Desk.Page($"{Sides}?left={first}")).QuerySelectorAll(".changes2 tbody tr"));
    }

    [Fact]
    public async Task WholeStateBroughtBack_FromBesideTheOther()
    {
        var was = Scratch.Text("potato-rolls");
        var first = await KeepAndChange();
        var page = await Desk.Page($"{Sides}?left={first}");
        Assert.Contains("Bring back", page.QuerySelector(".head button")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.SeeOther, (await Desk.Send(Form(page, "back"))).Status);
        Assert.Equal(was, Scratch.Text("potato-rolls"));
        // What is there already is not brought back, and neither is another recipe.
        Assert.Null((await Desk.Page($"{Sides}?left=")).QuerySelector(".head button"));
        Assert.Null((await Desk.Page($"{Sides}?left=tin-loaf")).QuerySelector(".head button"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Desk.Send(Form(page, "back"))).Status);
    }

    /// <summary>Every kind of difference that is shown can be brought back, or says that it hangs on another; what is brought back one after the other is the state it was.</summary>
    [Fact]
    public async Task EveryDifferenceShown_HasItsWayBack()
    {
        var first = Now;
        var was = Scratch.Text("potato-rolls");
        Scratch.Put("potato-rolls", was
            .Replace("title: Potato rolls", "title: Rolls", StringComparison.Ordinal).Replace("make: 10 rolls of 80 g", "make: 9 buns of 89 g", StringComparison.Ordinal)
            .Replace("air: 21 C", "air: 23 C", StringComparison.Ordinal).Replace("  - fork\n", "", StringComparison.Ordinal).Replace("sugar: 30 g", "sugar: 45 g, brown", StringComparison.Ordinal)
            .Replace("    salt: 7 g\n", "", StringComparison.Ordinal).Replace("fold: at 45 min, 2 min by hand", "fold: at 50 min, 2 min by hand", StringComparison.Ordinal)
            .Replace("salt, butter,", "butter,", StringComparison.Ordinal).Replace("    learn: scalding\n", "", StringComparison.Ordinal)
            .Replace("oven: 170 C fan", "oven: 180 C fan", StringComparison.Ordinal).Replace("cue: a knife slides in", "cue: soft", StringComparison.Ordinal)
            .Replace("  brush:\n    name: Brush with milk\n    kind: glaze\n    of: wash\n    hands: 2 min\n    tools: brush\n", "", StringComparison.Ordinal));
        var rows = 0;
        for (var left = 40; left > 0; left--)
        {
            var page = await Desk.Page($"{Sides}?left={first}");
            var changed = page.QuerySelectorAll(".changes2 tbody tr").ToArray();
            rows = Math.Max(rows, changed.Length);
            Assert.All(changed, row => Assert.NotEmpty(row.QuerySelector(".bring")!.TextContent.Trim()));
            if (page.QuerySelector(".bring button") is not { } button)
            {
                Assert.Empty(changed.Select(row => row.TextContent));
                break;
            }

            Assert.Equal(HttpStatusCode.SeeOther, (await Desk.Send(Form(page, "take"), ("take", button.GetAttribute("value")!))).Status);
        }

        Assert.True(rows >= 12, $"{rows} rows");
        Assert.Equal(StateId.Of(RecipeText.Read(was).Recipe!), StateId.Of(RecipeText.Read(Scratch.Text("potato-rolls")).Recipe!));
    }

    /// <summary>What moved a figure stands beside it, and comes to it.</summary>
    [Fact]
    public async Task Consequences_SayWhichChangeMovedThem()
    {
        var first = Now;
        Scratch.Put("potato-rolls", Scratch.Text("potato-rolls").Replace("sugar: 30 g", "sugar: 60 g", StringComparison.Ordinal).Replace("instant yeast: 4 g", "instant yeast: 6 g", StringComparison.Ordinal));
        string Because(IHtmlDocument page, string of) => page.QuerySelector($".comes tr[data-of='{of}'] .because")!.TextContent.Replace('\u00a0', ' ');
        var page = await Desk.Page($"{Sides}?left={first}");
        Assert.Equal("Sugar (Dough).", Because(page, "formula.trueSugar"));
        Assert.Equal("Sugar (Dough) +30 g, Instant yeast (Dough) +2 g.", Because(page, "formula.dough"));
        Assert.Matches(@"^Instant yeast \(Dough\) −\d+ min, Sugar \(Dough\) \+\d+ min, together [+−]\d+ min\.$", Because(page, "run.minutes.bulk"));
        Assert.Equal("", Because(page, "formula.flour"));
        // Two recipes differ in very much: that is worked out when it is asked for.
        var two = await Desk.Page($"{Sides}?left=tin-loaf");
        Assert.Empty(two.QuerySelectorAll(".because"));
        var asked = await Desk.Page(two.QuerySelector(".askbecause a")!.GetAttribute("href")!);
        Assert.Contains(asked.QuerySelectorAll(".comes td.because"), cell => cell.TextContent.Length > 0);
        Assert.Null(asked.QuerySelector(".askbecause"));
    }

    [Fact]
    public async Task TwoRecipes_StandSideBySide_AndNothingIsBroughtBackIntoAnOlderState()
    {
        var two = await Desk.Page($"{Sides}?right=tin-loaf");
        Assert.Equal("Two recipes", two.QuerySelector("h1")!.TextContent);
        Assert.NotEmpty(two.QuerySelectorAll(".changes2 tbody tr"));
        Assert.Empty(two.QuerySelectorAll(".bring button"));
        Assert.Equal(2, two.QuerySelectorAll("svg.strip-wide").Length);
        var odd = await Desk.Page($"{Sides}?left=99999&kitchen=nowhere");
        Assert.Equal(2, odd.QuerySelectorAll("[role=alert] li").Length);
    }

    private static IEnumerable<double> Figures(JsonElement told, params string[] names) =>
        names.Select(told.GetProperty).Where(value => value.ValueKind == JsonValueKind.Number).Select(value => value.GetDouble());
}

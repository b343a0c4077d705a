using System.Net;
using System.Text.Json;
using Doughwright.App.Desk.Compare;
using Doughwright.Engine.Quantities;

namespace Doughwright.App.Tests.Desk.Compare;

/// <summary>What the page of two kitchens says is what the command line says.</summary>
public partial class ComparePageTests
{
    private static readonly string[] Queries =
    [
        "",
        "?second=winter-cottage",
        "?second=winter-cottage&as-written",
        "?second=summer",
        "?first=mountain&second=summer",
        "?first=winter-cottage&second=",
        "?second=mountain&air=14C&oven=static",
        "?kitchen=mountain&dough=25C",
        "?second=summer&as-written&measures=us",
    ];

    public static TheoryData<string> Demos =>
        [.. Directory.EnumerateFiles(House.PathTo("demo", "recipes"), "*.yaml").Order(StringComparer.Ordinal).Select(file => Path.GetFileNameWithoutExtension(file)!)];

    [Theory]
    [MemberData(nameof(Demos))]
    public async Task Figures_AreThoseOfTheCommandLine(string recipe)
    {
        await using var desk = await ComparedDesk.Open();
        foreach (var query in Queries)
        {
            desk.Baked(recipe, query);
            var page = await desk.Page(recipe, query);
            var sides = ComparedDesk.CommandLines(page).Select(Json).ToArray();
            Assert.Equal(2, sides.Length);
            var figures = ComparedDesk.Figures(page);
            foreach (var figure in figures)
            {
                var (side, path) = (figure.Of.Split('.')[0], figure.Of.Split('.')[1..]);
                Assert.True(Math.Abs(figure.Value - At(sides[side == "first" ? 0 : 1], path)) <= 1e-9, $"{query}: {figure}");
                Assert.Equal(Shown(figure, path[^1], query.Contains("measures=us", StringComparison.Ordinal) ? MeasureSystem.Us : MeasureSystem.Metric), figure.Text);
            }

            var told = figures.Select(figure => figure.Of).ToHashSet();
            foreach (var (side, name) in new[] { (sides[0], "first"), (sides[1], "second") })
            {
                Assert.All(Expected(side, name), path => Assert.Contains(path, told));
            }
        }
    }

    /// <summary>What is shown of two figures and of their difference can be checked with a pencil.</summary>
    [Theory]
    [MemberData(nameof(Demos))]
    public void Rows_AddUpAsShown(string recipe)
    {
        using var bench = new Asking.Bench();
        var compared = ComparedRecipe.Open(recipe, bench.Shelf, Publishing.Wording.Words.Shipped, new())!.Recipe!;
        foreach (var system in Enum.GetValues<MeasureSystem>())
        {
            foreach (var query in Queries)
            {
                var comparison = compared.Compare(CompareQuestion.Of(query, compared.Other), system);
                foreach (var difference in comparison.Differences.All.Where(one => one.By is not null))
                {
                    var measure = Measure.Of(difference.Figure.Kind, system);
                    var steps = measure.Steps(difference.First!.Value, difference.Second!.Value);
                    var shares = measure.ShareOut([.. difference.Parts.Select(part => part.By)], steps);
                    Assert.True(shares.Count == 0 ? Math.Abs(steps) <= 1 : shares.Sum() == steps, $"{query} {difference.Figure}");
                }
            }
        }
    }

    [Fact]
    public async Task AddressWithoutKitchens_SetsAnotherBesideHome_AndKeepsTheDough()
    {
        await using var desk = await ComparedDesk.Open();
        var page = await desk.Page("potato-rolls", "");
        Assert.Equal(2, ComparedDesk.CommandLines(page).Count);
        Assert.DoesNotContain("--kitchen", ComparedDesk.CommandLines(page)[0]);
        Assert.Contains("--dough", ComparedDesk.CommandLines(page)[1]);
        Assert.Contains("Untouched", ComparedDesk.Answer(page), StringComparison.Ordinal);
    }

    /// <summary>A recipe's page at ?kitchen=mountain shows the recipe as written, so its link leads to the same.</summary>
    [Fact]
    public async Task QuestionOfARecipesPage_IsCarriedOverAsItIs()
    {
        await using var desk = await ComparedDesk.Open();
        Assert.Equal(["--kitchen", "mountain"], ComparedDesk.CommandLines(await desk.Page("potato-rolls", "?kitchen=mountain"))[1][2..]);
        Assert.Equal(["--kitchen", "mountain", "--air", "18C", "--dough", "25C", "--free", "potato"], ComparedDesk.CommandLines(await desk.Page("potato-rolls", "?kitchen=mountain&air=18C&dough=25C&free=potato"))[1][2..]);
    }

    /// <summary>A kitchen that is changed is not the one whose name it has, and the page says so wherever it names it.</summary>
    [Fact]
    public async Task ChangedKitchen_IsNotCalledAsTheOneItWas()
    {
        await using var desk = await ComparedDesk.Open();
        var page = await desk.Page("potato-rolls", "?first=mountain&second=mountain&air=30C");
        Assert.Contains("Kestrel cottage, heated, changed", ComparedDesk.Answer(page), StringComparison.Ordinal);
        // The hour at which one begins is no change of it.
        Assert.DoesNotContain(", changed", await desk.Page("potato-rolls", "?first=mountain&second=mountain&start=22:00"), StringComparison.Ordinal);
    }

    /// <summary>Part of the water goes in as ice: the answer says so, and so does its row.</summary>
    [Fact]
    public async Task IceThatIsAskedFor_StandsInItsRow()
    {
        await using var desk = await ComparedDesk.Open();
        var page = (await desk.Page("hearth-loaf", "?second=summer")).Replace("&#xA0;", " ", StringComparison.Ordinal).Replace('\u00a0', ' ');
        Assert.Matches(@"of the water as ice", ComparedDesk.Answer(page));
        Assert.Matches(@"<td>.*of it as ice.*</td>", page);
    }

    [Fact]
    public async Task WhatIsRefused_IsSaid_AndTheRestIsUsed()
    {
        await using var desk = await ComparedDesk.Open();
        var page = await desk.Page("potato-rolls", "?first=nowhere&second=mountain&air=hot&altitude=1500m");
        var words = ComparedDesk.Part(page, "<section class=\"kitchen\"", "</section>");
        Assert.Contains("nowhere", words, StringComparison.Ordinal);
        Assert.Contains("hot", words, StringComparison.Ordinal);
        Assert.Contains("--altitude", ComparedDesk.CommandLines(page)[1]);
        Assert.DoesNotContain("--air", ComparedDesk.CommandLines(page)[1]);
    }

    [Fact]
    public async Task UnknownRecipe_IsNotFound()
    {
        await using var desk = await ComparedDesk.Open();
        Assert.Equal(HttpStatusCode.NotFound, await desk.Status("/recipes/nothing/kitchens"));
        Assert.Equal(HttpStatusCode.NotFound, await desk.Status("/recipes/..%2Fsecret/kitchens"));
    }

    [Fact]
    public async Task TextThatIsNotUnderstood_IsSaid_AndNothingIsWorkedOut()
    {
        await using var desk = await ComparedDesk.Open();
        desk.Bench.WriteRecipe("broken", "doughwright: 1\ntitle: [a\n");
        var page = await desk.Page("broken", "");
        Assert.Contains("not understood", page, StringComparison.Ordinal);
        Assert.Empty(ComparedDesk.Figures(page));
    }

    [Fact]
    public async Task HostileNames_StayWords()
    {
        await using var desk = await ComparedDesk.Open();
        const string Hostile = "<script>alert(1)</script> \"x\" 'y' & {first} {0}";
        desk.Bench.WriteRecipe("hostile", File.ReadAllText(House.PotatoRolls)
            .Replace("title: Potato rolls", $"title: {Hostile}", StringComparison.Ordinal)
            .Replace("name: Bulk", $"name: {Hostile}", StringComparison.Ordinal));
        desk.Bench.WriteKitchen("odd", File.ReadAllText(House.PathTo("demo", "kitchens", "mountain.yaml")).Replace("Kestrel cottage, heated", Hostile, StringComparison.Ordinal));
        var page = await desk.Page("hostile", "?second=odd");
        Assert.DoesNotContain("<script>alert", page, StringComparison.Ordinal);
        Assert.Contains(Hostile, ComparedDesk.Table(page), StringComparison.Ordinal);
        Assert.NotEmpty(ComparedDesk.Figures(page));
    }

    [Theory]
    [InlineData("country-loaf")]
    [InlineData("milk-bread")]
    [InlineData("potato-rolls-machine")]
    [InlineData("potato-rolls-no-bowl")]
    [InlineData("potato-rolls-core-above-boiling")]
    public async Task EveryRecipe_HasAPage(string text)
    {
        await using var desk = await ComparedDesk.Open();
        desk.Bench.WriteRecipe(text, File.ReadAllText(House.Text(text + ".yaml")));
        foreach (var query in new[] { "", "?first=summer&second=winter-cottage", "?second=summer&as-written", "?second=&air=33C&as-written", "?second=&air=4C" })
        {
            var page = await desk.Page(text, query);
            Assert.Contains("steptable", page, StringComparison.Ordinal);
            var shown = ComparedDesk.WithoutState(page);
            Assert.DoesNotContain("NaN", shown, StringComparison.Ordinal);
            Assert.DoesNotContain("∞", shown, StringComparison.Ordinal);
            Assert.DoesNotContain("{", ComparedDesk.Answer(page) + ComparedDesk.Table(page), StringComparison.Ordinal);
        }
    }

    /// <summary>A room in which nothing cools to where it should: there is no total, and both paragraphs say which step has no end.</summary>
    [Fact]
    public async Task StepThatNeverEnds_IsSaid()
    {
        await using var desk = await ComparedDesk.Open();
        var page = await desk.Page("potato-rolls", "?second=&air=33C&as-written");
        Assert.Contains("cannot be told", ComparedDesk.Answer(page), StringComparison.Ordinal);
        Assert.Contains("never ends", ComparedDesk.Table(page), StringComparison.Ordinal);
        Assert.Contains("settles at 33.0 °C", ComparedDesk.Table(page), StringComparison.Ordinal);
        Assert.DoesNotContain(ComparedDesk.Figures(page), figure => figure.Of == "second.totalMinutes");
    }

    /// <summary>A kitchen may be called "home": the recipe's own has no name that a file can have.</summary>
    [Fact]
    public async Task AKitchenCalledHome_CanBeSetBesideTheRecipesOwn()
    {
        await using var desk = await ComparedDesk.Open();
        desk.Bench.WriteKitchen("home", "doughwright: 1\nkitchen: Ours\nair: 16 C\n");
        var page = await desk.Page("potato-rolls", "?first=&second=home&as-written");
        var lines = ComparedDesk.CommandLines(page);
        Assert.DoesNotContain("--kitchen", lines[0]);
        Assert.Equal(["--kitchen", desk.Bench.Shelf.KitchenTexts.FileOf("home")], lines[1][2..]);
        Assert.Contains("Ours", ComparedDesk.Table(page), StringComparison.Ordinal);
        Assert.Contains("<option value=\"home\" selected", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task KitchenThatIsNotAllText_IsNoChoice()
    {
        await using var desk = await ComparedDesk.Open();
        File.WriteAllBytes(desk.Bench.Shelf.KitchenTexts.FileOf("bytes"), [.. "doughwright: 1\nkitchen: B"u8, 0xFF, .. "d\nair: 18 C\n"u8]);
        Assert.DoesNotContain("value=\"bytes\"", await desk.Page("potato-rolls", ""), StringComparison.Ordinal);
    }

    /// <summary>A row for each mix, named by its step, with the temperature of that step.</summary>
    [Fact]
    public async Task DoughThatIsMixedTwice_HasARowForEach()
    {
        await using var desk = await ComparedDesk.Open();
        desk.Bench.WriteRecipe("soaked", Recipes.TwoMixes.Text);
        var page = await desk.Page("soaked", "?second=summer&as-written");
        var told = ComparedDesk.Figures(page).Select(figure => figure.Of).ToArray();
        Assert.Single(told, of => of == "second.steps.stir.endCelsius");
        Assert.Equal(
            ["Dough after “Stir”", "Dough after “Mix”"],
            Cells().Matches(page).Select(cell => System.Net.WebUtility.HtmlDecode(cell.Groups["name"].Value)).Where(name => name.Contains('“', StringComparison.Ordinal)));
        Assert.DoesNotContain("after mixing", ComparedDesk.Table(page), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("26.5C", "26.5 °C")]
    [InlineData("25C", "25 °C")]
    public async Task DoughAskedFor_IsToldAsItIsAsked(string asked, string told)
    {
        await using var desk = await ComparedDesk.Open();
        var page = await desk.Page("potato-rolls", $"?second=winter-cottage&dough={asked}&free=potato,scald");
        Assert.Contains($"asked for at {told}", ComparedDesk.Table(page), StringComparison.Ordinal);
    }

    [System.Text.RegularExpressions.GeneratedRegex("<th scope=\"row\">(?<name>[^<]*)")]
    private static partial System.Text.RegularExpressions.Regex Cells();

    private static JsonElement Json(string[] arguments) => JsonDocument.Parse(Run.Of([.. arguments, "--json"]).Output).RootElement;

    private static double At(JsonElement json, string[] path)
    {
        foreach (var name in path)
        {
            json = json.ValueKind == JsonValueKind.Array
                ? int.TryParse(name, out var index) ? json[index] : json.EnumerateArray().First(item => item.GetProperty("id").GetString() == name)
                : json.GetProperty(name);
        }

        return json.GetDouble();
    }

    private static string Shown(ComparedDesk.Figure figure, string name, MeasureSystem system) => name switch
    {
        "minutesLow" or "minutesHigh" or "totalMinutesLow" or "totalMinutesHigh" => Show.DurationColumn(Duration.FromMinutes(figure.Value)),
        "startMinutes" => Show.Duration(Duration.FromMinutes(Math.Abs(figure.Value))),
        "minutes" or "totalMinutes" or "handsMinutes" => Show.Duration(Duration.FromMinutes(figure.Value)),
        "celsius" => Show.TemperatureAsked(Temperature.FromCelsius(figure.Value), system),
        "iceGrams" => Show.Mass(Mass.FromGrams(figure.Value), system),
        _ => Show.Temperature(Temperature.FromCelsius(figure.Value), system),
    };

    /// <summary>What a page must tell of a rehearsal: the whole, every step that is not the author's own time, and the doughs.</summary>
    private static IEnumerable<string> Expected(JsonElement json, string side)
    {
        yield return $"{side}.handsMinutes";
        yield return $"{side}.kitchen.boilsCelsius";
        if (json.GetProperty("totalMinutes").ValueKind == JsonValueKind.Number)
        {
            yield return $"{side}.totalMinutes";
        }

        foreach (var step in json.GetProperty("steps").EnumerateArray())
        {
            if (step.GetProperty("kind").GetString() is "bulk" or "proof" or "bake" && step.GetProperty("minutes").ValueKind == JsonValueKind.Number)
            {
                yield return $"{side}.steps.{step.GetProperty("id").GetString()}.minutes";
            }
        }

        foreach (var component in json.GetProperty("components").EnumerateArray().Where(part => part.GetProperty("kind").GetString() == "dough" && part.GetProperty("mixedCelsius").ValueKind == JsonValueKind.Number))
        {
            yield return $"{side}.components.{component.GetProperty("id").GetString()}.mixedCelsius";
        }
    }
}

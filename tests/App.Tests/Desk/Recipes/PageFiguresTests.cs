using System.Globalization;
using System.Text.Json.Nodes;
using AngleSharp.Dom;
using Doughwright.App.Desk.Asking;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Tests.Desk.Recipes;

/// <summary>Every figure of a recipe's page is the command line's, in every kitchen, with the dough kept and as written.</summary>
public sealed class PageFiguresTests(OpenRecipes desk) : IClassFixture<OpenRecipes>
{
    public static TheoryData<string, string, bool> Everywhere()
    {
        var all = new TheoryData<string, string, bool>();
        foreach (var recipe in Files("recipes"))
        {
            all.Add(recipe, "", false);
            foreach (var kitchen in Files("kitchens"))
            {
                all.Add(recipe, kitchen, false);
                all.Add(recipe, kitchen, true);
            }
        }

        return all;
    }

    [Theory]
    [MemberData(nameof(Everywhere))]
    public async Task EveryFigure_IsTheCommandLines(string recipe, string kitchen, bool kept)
    {
        var question = Asked(recipe, kitchen, kept);
        await desk.Baked(recipe, question);
        var page = await desk.Page($"/recipes/{recipe}{question.Query()}");
        var said = new CommandLineFigures(Path(recipe), question.Items.Select(item => $"--{item.Name}={item.Value}"));
        var figures = page.QuerySelectorAll("data[data-of]");
        var seen = new HashSet<string>();
        foreach (var figure in figures)
        {
            var place = figure.GetAttribute("data-of")!;
            var value = double.Parse(figure.GetAttribute("value")!, CultureInfo.InvariantCulture);
            var theirs = said.At(place);
            Assert.True(theirs is not null, $"The command line says nothing at {place}.");
            Assert.True(Math.Abs(theirs.Value - value) <= 1e-9 * Math.Max(1, Math.Abs(value)), $"{place}: {value} on the page, {theirs} on the command line.");
            Assert.True(Texts(place, value).Any(text => figure.TextContent == text || figure.TextContent.StartsWith(text + " ", StringComparison.Ordinal)), $"{place}: {value} reads {figure.TextContent}.");
            seen.Add(place);
        }

        var missing = Wanted(said).Where(place => said.At(place) is not null && !seen.Contains(place)).ToArray();
        Assert.True(missing.Length == 0, $"The page does not show {string.Join(", ", missing)}.");
    }

    [Fact]
    public async Task UsMeasures_ChangeTheWordsAndNoValue()
    {
        var metric = await desk.Page("/recipes/potato-rolls?kitchen=winter-cottage&dough=26C&free=potato,scald");
        var us = await desk.Page("/recipes/potato-rolls?kitchen=winter-cottage&dough=26C&free=potato,scald&measures=us");
        static string[] Values(IParentNode page) => [.. page.QuerySelectorAll("data[data-of]").Select(data => data.GetAttribute("data-of") + data.GetAttribute("value"))
            .Where(text => !text.Contains(".dial.", StringComparison.Ordinal))];
        Assert.Equal(Values(metric), Values(us));
        Assert.Contains("62.6", us.QuerySelector("#field-air")!.GetAttribute("value"), StringComparison.Ordinal);
        Assert.DoesNotContain("°C", us.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
    }

    /// <summary>What no page may leave out.</summary>
    private static IEnumerable<string> Wanted(CommandLineFigures said)
    {
        string[] always =
        [
            "totalMinutes", "totalMinutesLow", "totalMinutesHigh", "handsMinutes", "solve.0.celsius", "formula.doughGrams", "formula.flourGrams",
            "formula.percent.hydration", "formula.percent.trueWater", "formula.water.atLeastGrams",
        ];
        return always
            .Concat(said.Rehearsal["steps"]!.AsArray().SelectMany(step => OfStep(step!)))
            .Concat(said.Rehearsal["components"]!.AsArray().Where(part => (string?)part!["kind"] == "dough").Select(part => $"components.{part!["id"]}.mixedCelsius"))
            .Concat(said.Formula["components"]!.AsArray().SelectMany(part => part!["lines"]!.AsArray()
                .Where(_ => (string?)part["kind"] == "dough" || (double?)part["shareInDough"] == 0 || part["lines"]!.AsArray().Count > 1)
                .Select(line => $"formula.components.{part["id"]}.lines.{line!["id"]}.grams")));
    }

    private static IEnumerable<string> OfStep(JsonNode step)
    {
        yield return $"steps.{step["id"]}.startMinutes";
        var rises = (string?)step["kind"] is "bulk" or "proof" or "bake" or "cool";
        if ((double?)step["handsMinutes"] == 0 || rises)
        {
            yield return $"steps.{step["id"]}.minutes";
        }

        if ((double?)step["handsMinutes"] > 0 && step["events"]!.AsArray().Count == 0)
        {
            yield return $"steps.{step["id"]}.handsMinutes";
        }

        if ((string?)step["kind"] is "bulk" or "proof" or "bake")
        {
            if ((double?)step["minutesLow"] != (double?)step["minutesHigh"])
            {
                yield return $"steps.{step["id"]}.minutesLow";
                yield return $"steps.{step["id"]}.minutesHigh";
            }

            yield return $"steps.{step["id"]}.endCelsius";
        }
    }

    /// <summary>How the command line would print such a value; in a column the unit stands in its head, and parts are rounded so that they add up.</summary>
    private static IEnumerable<string> Texts(string place, double value)
    {
        if (place.Contains("inutes", StringComparison.Ordinal))
        {
            return [Show.Duration(Duration.FromMinutes(value)), Show.DurationColumn(Duration.FromMinutes(value)), Show.Number(Math.Floor(value), 0), Show.Number(Math.Ceiling(value), 0)];
        }

        if (place.EndsWith("elsius", StringComparison.Ordinal) || place.Contains("elsius", StringComparison.Ordinal))
        {
            var warmth = Temperature.FromCelsius(value);
            string[] whole = [Show.Temperature(warmth), Show.TemperatureAsked(warmth)];
            return [.. whole, .. whole.Select(text => text[..^3])];
        }

        if (place.EndsWith("rams", StringComparison.Ordinal))
        {
            return [Show.Mass(Mass.FromGrams(value)), Show.Mass(Mass.FromGrams(value))[..^2], .. Rounded(value)];
        }

        return [.. Rounded(value), Show.Percent(Percent.FromValue(value)), Show.Number(value, 2)];
    }

    private static IEnumerable<string> Rounded(double value) =>
    [
        Show.Number(Math.Floor(value), 0), Show.Number(Math.Ceiling(value), 0), Show.Number(Math.Floor(Math.Round(value * 10, 6)) / 10, 1), Show.Number(Math.Ceiling(Math.Round(value * 10, 6)) / 10, 1),
    ];

    private Question Asked(string recipe, string kitchen, bool kept)
    {
        var question = kitchen.Length == 0 ? Question.Nothing : Question.Nothing.With(Question.Kitchen, kitchen);
        if (!kept)
        {
            return question;
        }

        var text = RecipeText.Read(File.ReadAllText(Path(recipe))).Recipe!;
        return Keeping.Of(question, desk.Bench.Reader(text, recipe), Formula.Balance(text, Larder.Shipped), Rehearser.Rehearse(text, Larder.Shipped)).Question;
    }

    private static string Path(string recipe) => House.PathTo("demo", "recipes", recipe + ".yaml");

    private static IEnumerable<string> Files(string folder) =>
        Directory.EnumerateFiles(House.PathTo("demo", folder), "*.yaml").Select(file => System.IO.Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal);
}

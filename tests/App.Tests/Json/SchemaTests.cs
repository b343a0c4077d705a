using System.Text.Json;
using Doughwright.App.Json;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;
using Json.Schema;

namespace Doughwright.App.Tests.Json;

/// <summary>Every JSON object of the program fits its schema, and docs/json.md names every field of it.</summary>
public class SchemaTests
{
    private static readonly Voice Voice = new(Words.Shipped, MeasureSystem.Metric);

    public static TheoryData<string> Schemas => [.. Directory.EnumerateFiles(House.PathTo("tests", "data", "schema"), "*.json").Select(file => Path.GetFileNameWithoutExtension(file))];

    [Fact]
    public void Formula_Fits()
    {
        Fits("formula", Run.Of("formula", House.PotatoRolls, "--json").Output);
        Fits("formula", Run.Of("formula", House.PotatoRolls, "--json", "--weighed", "potato=200g:170g").Output);
    }

    [Fact]
    public void Formula_WithUnknownIngredient_FitsAndHasNulls()
    {
        var text = File.ReadAllText(House.PotatoRolls).Replace("sugar: 30 g", "moon dust: 30 g", StringComparison.Ordinal);
        var json = Run.WithInput(text, "formula", "-", "--json").Output;
        Fits("formula", json);
        using var parsed = JsonDocument.Parse(json);
        Assert.Equal(JsonValueKind.Null, parsed.RootElement.GetProperty("percent").GetProperty("trueWater").ValueKind);
    }

    [Fact]
    public void Rehearsal_Fits()
    {
        Fits("rehearse", RehearsalJson.Write(Stamp.Of(Samples.Recipe), Samples.Rehearsal, new(Samples.Findings, [(Samples.Findings[1], "seen")]), Voice));
        Fits("rehearse", RehearsalJson.Write(Stamp.Of(Samples.Recipe), Samples.Home, new([], []), Voice));
    }

    [Fact]
    public void Place_Fits()
    {
        Fits("place", Run.Of("place", House.PotatoRolls, "--to", "26C", "--kitchen", "winter-cottage", "--json").Output);
        Fits("place", Run.Of("place", House.PotatoRolls, "--to", "30C", "--kitchen", "summer", "--json").Output);
        Fits("place", Run.Of("place", House.Text("potato-rolls-no-bowl.yaml"), "--to", "26C", "--json").Output);
    }

    [Fact]
    public void Ready_Fits()
    {
        Fits("ready", Run.Of("ready", House.PotatoRolls, "--start", "22:00", "--by", "6:00", "--json").Output);
        Fits("ready", Run.Of("ready", House.Demo("night-boat-rye.yaml"), "--start", "8:00", "--by", "6:00+1d", "--json").Output);
    }

    [Fact]
    public void Compare_Fits()
    {
        Fits("compare", Run.Of("compare", House.PotatoRolls, House.Demo("tin-loaf.yaml"), "--json").Output);
        Fits("compare", Run.Of("compare", House.PotatoRolls, House.PotatoRolls, "--kitchen", "winter-cottage", "--json").Output);
    }

    [Fact]
    public void Findings_Fit() => Fits("findings", FindingsJson.Write(Stamp.Of(Samples.Recipe), Samples.Recipe, new(Samples.Findings, [(Samples.Findings[1], "seen")]), Voice));

    [Fact]
    public void Page_Fits() => Fits("page", PageJson.Write(Stamp.Of(Samples.Recipe), "x", "x.html", 1, new(Samples.Findings, []), Voice));

    [Fact]
    public void NotUnderstood_Fits() =>
        Fits("not-understood", Run.Of("findings", House.Text("potato-rolls-twelve-faults.yaml"), "--json").Output);

    [Fact]
    public void Picture_Fits()
    {
        var folder = Directory.CreateTempSubdirectory("picture-").FullName;
        try
        {
            Fits("picture", Run.Of("picture", House.PotatoRolls, "--out", Path.Join(folder, "a.svg"), "--json").Output);
            var unknown = File.ReadAllText(House.PotatoRolls).Replace("sugar: 30 g", "moon dust: 30 g", StringComparison.Ordinal);
            Fits("picture", Run.WithInput(unknown, "picture", "-", "--of", "heat", "--out", Path.Join(folder, "b.svg"), "--json").Output);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Book_Fits()
    {
        using var book = new Book.TestBook();
        using (var open = book.Open())
        {
            Book.RichBook.Fill(open);
        }

        string[] folder = ["--folder", book.Folder, "--json"];
        foreach (var words in new string[][] { ["backup"], ["verify"], ["restore"], ["export", "--out", book.In("out")], ["import", book.In("out")] })
        {
            Fits("book", Run.Of(["book", .. words, .. folder]).Output);
        }

        Book.TestBook.Spoil(book.Path, 4096 * 3, [.. Enumerable.Repeat((byte)0xee, 4096)]);
        Fits("book", Run.Of(["book", "verify", .. folder]).Output);
    }

    [Fact]
    public void Evidence_Fits() => Fits("evidence", Run.Of("evidence", House.PathTo("tests", "data", "published"), "--json").Output);

    [Fact]
    public void Error_Fits() => Fits("error", Run.Of("rehearse", House.PotatoRolls, "--json", "--air", "17", "--tap", "99C").Output);

    [Fact]
    public void Numbers_AreNotRounded()
    {
        using var json = JsonDocument.Parse(Run.Of("formula", House.PotatoRolls, "--json").Output);
        var water = json.RootElement.GetProperty("percent").GetProperty("trueWater").GetDouble();
        Assert.Equal(67.8, water, 0.05);
        Assert.NotEqual(Math.Round(water, 3), water);
    }

    [Theory]
    [InlineData("butter=olive oil")]
    [InlineData("egg=")]
    [InlineData("flour=wholemeal flour")]
    [InlineData("salt=sugar")]
    public void Swap_Fits(string replace) => Fits("swap", Run.Of("swap", House.PotatoRolls, "--json", "--replace", replace).Output);

    [Fact]
    public void SwapOffers_Fit()
    {
        Fits("swap-offers", Run.Of("swap", House.PotatoRolls, "--json").Output);
        Fits("swap-offers", Run.Of("swap", House.Text("harbour-buns.yaml"), "--json").Output);
    }

    [Theory]
    [MemberData(nameof(Schemas))]
    public void EveryField_IsDocumented(string schema)
    {
        var page = File.ReadAllText(House.PathTo("docs", "json.md"));
        using var json = JsonDocument.Parse(File.ReadAllText(House.PathTo("tests", "data", "schema", schema + ".json")));
        Assert.Equal([], Properties(json.RootElement).Distinct().Where(name => !page.Contains($"`{name}`", StringComparison.Ordinal)).ToArray());
    }

    /// <summary>The closed list of step kinds: in the page, in the schema and in the engine it is the same.</summary>
    [Fact]
    public void StepKinds_AreTheSameEverywhere()
    {
        var kinds = Enum.GetValues<StepKind>().Select(kind => JsonText.Name(kind)).ToArray();
        var page = File.ReadAllLines(House.PathTo("docs", "json.md"));
        var start = Array.FindIndex(page, line => line.StartsWith("## Step kinds", StringComparison.Ordinal));
        var listed = page.Skip(start + 1).TakeWhile(line => !line.StartsWith("## ", StringComparison.Ordinal))
            .Where(line => line.StartsWith("- `", StringComparison.Ordinal))
            .Select(line => line.Split('`')[1]);
        Assert.Equal(kinds, listed);
        using var schema = JsonDocument.Parse(File.ReadAllText(House.PathTo("tests", "data", "schema", "rehearse.json")));
        var allowed = schema.RootElement.GetProperty("$defs").GetProperty("stepKind").GetProperty("enum").EnumerateArray().Select(kind => kind.GetString());
        Assert.Equal(kinds, allowed);
    }

    private static void Fits(string name, string json)
    {
        var schema = JsonSchema.FromText(File.ReadAllText(House.PathTo("tests", "data", "schema", name + ".json")));
        using var parsed = JsonDocument.Parse(json);
        var result = schema.Evaluate(parsed.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        var errors = (result.Details ?? []).Where(detail => detail.Errors is not null)
            .Select(detail => $"{detail.InstanceLocation}: {string.Join("; ", detail.Errors!.Select(error => error.Value))}");
        Assert.True(result.IsValid, string.Join('\n', errors));
        Assert.Equal("form", parsed.RootElement.EnumerateObject().First().Name);
    }

    private static IEnumerable<string> Properties(JsonElement schema)
    {
        if (schema.ValueKind == JsonValueKind.Array)
        {
            return schema.EnumerateArray().SelectMany(Properties);
        }

        if (schema.ValueKind != JsonValueKind.Object)
        {
            return [];
        }

        return schema.EnumerateObject().SelectMany(entry => entry.Name == "properties"
            ? entry.Value.EnumerateObject().Select(property => property.Name).Concat(Properties(entry.Value))
            : Properties(entry.Value));
    }
}

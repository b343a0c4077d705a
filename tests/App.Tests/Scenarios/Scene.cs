using System.Text.Json;

namespace Doughwright.App.Tests.Scenarios;

/// <summary>One command with --json, read back by the names that outside programs rely on.</summary>
internal sealed class Scene
{
    private Scene(Run run)
    {
        Run = run;
        using var json = JsonDocument.Parse(run.Output);
        Json = json.RootElement.Clone();
    }

    public Run Run { get; }

    public int ExitCode => Run.ExitCode;

    public JsonElement Json { get; }

    public JsonElement this[string name] => Json.GetProperty(name);

    public IReadOnlyList<JsonElement> Findings => [.. this["findings"].EnumerateArray()];

    public IReadOnlyList<string> Kinds => [.. Findings.Select(finding => finding.GetProperty("kind").GetString()!)];

    /// <summary>The potato rolls in a kitchen.</summary>
    public static Scene Rehearse(params string[] options) => RehearseFile(House.PotatoRolls, options);

    public static Scene RehearseFile(string file, params string[] options) => new(Run.Of(["rehearse", file, "--json", .. options]));

    /// <summary>The potato rolls with one piece of the text exchanged, which must be there once.</summary>
    public static Scene RehearseWith(string piece, string instead, params string[] options) =>
        RehearseText(Exchange(File.ReadAllText(House.PotatoRolls), piece, instead), options);

    public static Scene RehearseText(string text, params string[] options) => new(Run.WithInput(text, ["rehearse", "-", "--json", .. options]));

    public static Scene Formula(string file, params string[] options) => new(Run.Of(["formula", file, "--json", .. options]));

    public static Scene FormulaOfText(string text) => new(Run.WithInput(text, "formula", "-", "--json"));

    public static Scene FindingsOf(string file) => new(Run.Of("findings", file, "--json"));

    public static Scene FindingsOfText(string text) => new(Run.WithInput(text, "findings", "-", "--json"));

    public static string Exchange(string text, string piece, string instead)
    {
        Assert.Equal(2, text.Split(piece).Length);
        return text.Replace(piece, instead, StringComparison.Ordinal);
    }

    public JsonElement Step(string id) => Only(this["steps"], id);

    /// <summary>Minutes of a step; null when it never ends or cannot be computed.</summary>
    public double? Minutes(string step) => NumberOf(Step(step), "minutes");

    /// <summary>How warm a component is right after mixing or pouring.</summary>
    public double? Mixed(string component) => NumberOf(Only(this["components"], component), "mixedCelsius");

    /// <summary>The answer in which just these lines are free.</summary>
    public JsonElement Answer(params string[] lines) => this["solve"].EnumerateArray()
        .Single(answer => answer.GetProperty("lines").EnumerateArray().Select(line => line.GetString()!).ToHashSet().SetEquals(lines));

    /// <summary>How warm just these lines must go in.</summary>
    public double? Asked(params string[] lines) => NumberOf(Answer(lines), "celsius");

    public double? Percent(string name) => NumberOf(this["percent"], name);

    public JsonElement Line(string component, string line) => Only(Only(this["components"], component).GetProperty("lines"), line);

    /// <summary>The one finding of a kind at a place.</summary>
    public JsonElement Finding(string kind, string place) => Findings.Single(finding =>
        finding.GetProperty("kind").GetString() == kind && finding.GetProperty("place").GetString() == place);

    public static double? NumberOf(JsonElement element, string name) =>
        element.GetProperty(name) is { ValueKind: JsonValueKind.Number } number ? number.GetDouble() : null;

    private static JsonElement Only(JsonElement list, string id) => list.EnumerateArray().Single(one => one.GetProperty("id").GetString() == id);
}

using System.Text.Json.Nodes;

namespace Doughwright.App.Tests.Desk.Recipes;

/// <summary>Figures of the command line's JSON by their place: "steps.bulk.minutes", "formula.components.scald.lines.water.grams".</summary>
internal sealed class CommandLineFigures(string recipe, IEnumerable<string> options)
{
    private readonly JsonNode rehearsal = JsonNode.Parse(Run.Of(["rehearse", recipe, "--json", .. options]).Output)!;
    private readonly JsonNode formula = JsonNode.Parse(Run.Of("formula", recipe, "--json").Output)!;

    public JsonNode Rehearsal => rehearsal;

    public JsonNode Formula => formula;

    /// <summary>Null when nothing stands there.</summary>
    public double? At(string place)
    {
        var names = place.Split('.');
        var node = names[0] == "formula" ? formula : rehearsal;
        foreach (var name in names[0] == "formula" ? names.Skip(1) : names)
        {
            node = node switch
            {
                JsonArray list when int.TryParse(name, out var index) => index < list.Count ? list[index] : null,
                JsonArray list => list.FirstOrDefault(item => (string?)item!["id"] == name),
                JsonObject thing => thing[name],
                _ => null,
            };
        }

        return (double?)node;
    }
}

using System.Text.Json;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Json;

/// <summary>What a result was computed from. Two results with the same stamp and the same request are the same.</summary>
/// <param name="State">Hash of the recipe's canonical text.</param>
/// <param name="Engine">Version of the engine.</param>
/// <param name="Larder">Version of the larder, with the recipe's own ingredients in it and for the region it was written in.</param>
/// <param name="Calibration">What was learnt from trials; "none" before any.</param>
internal sealed record Stamp(string State, string Engine, string Larder, string Calibration)
{
    public static string EngineVersion => typeof(Recipe).Assembly.GetName().Version!.ToString(3);

    public static Stamp Of(Recipe recipe) => new(StateId.Of(recipe), EngineVersion, recipe.LarderOver(Doughwright.Engine.Ingredients.Larder.Shipped).Version, "none");

    public void WriteTo(Utf8JsonWriter json)
    {
        json.WriteStartObject("stamp");
        json.WriteString("state", State);
        json.WriteString("engine", Engine);
        json.WriteString("larder", Larder);
        json.WriteString("calibration", Calibration);
        json.WriteEndObject();
    }
}

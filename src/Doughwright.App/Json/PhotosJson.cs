using System.Text.Json;
using Doughwright.Engine.Recipes;

namespace Doughwright.App.Json;

/// <summary>The photos that a recipe names: those of the whole, then those of its steps in the order of the method.</summary>
internal static class PhotosJson
{
    public static void Write(Utf8JsonWriter json, Recipe recipe) =>
        json.Array("photos", recipe.Photos.Select(photo => (Step: (string?)null, photo)).Concat(recipe.Steps.SelectMany(step => step.Photos.Select(photo => (Step: (string?)step.Id, photo)))), one =>
        {
            json.WriteString("photo", one.photo.Name);
            json.WriteString("step", one.Step);
            json.WriteString("words", one.photo.Words);
        });
}

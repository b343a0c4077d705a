using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Remedies;

/// <summary>Doses that are missing or have slipped, where the usual one is known, and water that a weighing asks for.</summary>
internal static class DoseRemedies
{
    private const string Salt = "salt";

    public static IEnumerable<KeyValuePair<string, Func<Found, IEnumerable<Remedy>>>> All =>
    [
        new("salt-missing", AddSalt),
        new("salt-slip", WriteSalt),
        new("weighed-drier", found => Water(found, 1)),
        new("weighed-wetter", found => Water(found, -1)),
    ];

    private static IEnumerable<Remedy> AddSalt(Found found)
    {
        if (found.Part is { } part && found.Value<Mass>("offered") is { } offered && !part.Lines.Any(line => line.Id == Salt))
        {
            var mass = found.OnScale(offered);
            var line = new Line { Id = Salt, Name = Salt, Mass = mass, Typed = ExactText.Of(mass), Position = Position.None };
            yield return found.Remedy(Verbs.AddLine, recipe => recipe.AddLine(part.Id, line), ("mass", mass), ("name", Salt), ("where", part.Name));
        }
    }

    private static IEnumerable<Remedy> WriteSalt(Found found)
    {
        if (found is { Part: { } part, Line: { } line } && found.Value<Mass>("offered") is { } offered)
        {
            var mass = found.OnScale(offered);
            yield return found.Remedy(
                Verbs.WriteMass, recipe => recipe.Line(part.Id, line.Id, old => old.Weighing(mass)), ("mass", mass), ("name", line.Name), ("where", part.Name));
        }
    }

    /// <summary>Into the largest line of plain water of the part that the finding names.</summary>
    private static IEnumerable<Remedy> Water(Found found, int sign)
    {
        if (found.Value<Mass>("water") is { } water
            && found.Recipe.Components.FirstOrDefault(part => part.Id == found.Word("where") || part.Name == found.Word("where")) is { } part
            && part.Lines.Where(line => line.Uses is null && IsWater(line)).MaxBy(line => line.Mass?.Grams ?? 0) is { Mass: { } there } line
            && there + (water * sign) is { Grams: > 0 } changed)
        {
            yield return found.Remedy(
                sign > 0 ? Verbs.AddWater : Verbs.LeaveWaterOut,
                recipe => recipe.Line(part.Id, line.Id, old => old.Weighing(found.OnScale(changed))),
                ("mass", found.OnScale(water)),
                ("where", part.Name));
        }
    }

    private static bool IsWater(Line line) => Larder.Shipped.Find(line.Name, line.Conditions) is { Ingredient.Role: Role.Water };
}

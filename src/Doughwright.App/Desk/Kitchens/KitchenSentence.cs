using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Kitchens;

/// <summary>A kitchen in words: everything that its text says and a rehearsal goes by.</summary>
internal static class KitchenSentence
{
    public static string Of(Kitchen kitchen, Voice voice)
    {
        var air = kitchen.Air.At(Duration.Zero);
        var told = new List<string>
        {
            voice.Say("kitchens.room", ("air", Written(air, voice)), ("altitude", Show.Altitude(kitchen.Altitude, voice.Measures))),
        };
        var changes = kitchen.Air.Knots.Where(knot => knot.From > Duration.Zero)
            .Select(knot => voice.Say("air-change", ("air", knot.Air), ("after", knot.From)))
            .ToArray();
        if (changes.Length > 0)
        {
            told.Add(voice.Say("kitchen-air-changes", ("changes", changes)));
        }

        told.Add(kitchen.Ingredients is { } shelf
            ? voice.Say("kitchens.shelf", ("shelf", Written(shelf, voice)), ("tap", Written(kitchen.Tap, voice)))
            : voice.Say("kitchens.shelf-as-room", ("tap", Written(kitchen.Tap, voice))));
        told.Add(kitchen.ProofingPlace is { } place
            ? voice.Say("kitchens.fridge-and-place", ("fridge", Written(kitchen.Fridge, voice)), ("place", Written(place, voice)))
            : voice.Say("kitchens.fridge", ("fridge", Written(kitchen.Fridge, voice))));
        told.Add(voice.Say("kitchens.oven", ("mode", voice.Oven(kitchen.Oven)), ("trays", kitchen.Trays), ("scale", kitchen.Scale)));
        return string.Join(' ', told);
    }

    private static string Written(Temperature temperature, Voice voice) => voice.Text(temperature, "written");
}

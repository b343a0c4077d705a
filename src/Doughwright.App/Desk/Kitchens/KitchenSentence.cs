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
        told.AddRange(OfOven(kitchen.OvenTraits, voice));
        if (kitchen.Vessels.Count > 0)
        {
            told.Add(voice.Say("kitchens.vessels", ("names", kitchen.Vessels.Select(vessel => vessel.Name!).ToArray())));
        }

        return string.Join(' ', told);
    }

    private static IEnumerable<string> OfOven(OvenTraits oven, Voice voice)
    {
        if (oven.OffDial is { } off)
        {
            yield return off == TemperatureDelta.Zero ? voice.Say("kitchens.oven-as-its-dial")
                : off > TemperatureDelta.Zero ? voice.Say("kitchens.oven-hotter", ("difference", off))
                : voice.Say("kitchens.oven-cooler", ("difference", TemperatureDelta.Zero - off));
        }

        if (oven.HeatsIn is { } heats)
        {
            yield return voice.Say("kitchens.oven-heats", ("time", heats));
        }

        if (oven.RecoversIn is { } recovers)
        {
            yield return voice.Say("kitchens.oven-recovers", ("time", recovers));
        }

        if (oven.Steam != OvenTraits.Usual.Steam)
        {
            yield return voice.Say(oven.Steam == OvenSteam.None ? "kitchens.oven-no-steam" : "kitchens.oven-boiler");
        }

        if (oven.Hearth is { } hearth)
        {
            yield return voice.Say(hearth.Material == HearthMaterial.Stone ? "kitchens.oven-stone" : "kitchens.oven-steel");
        }
    }

    private static string Written(Temperature temperature, Voice voice) => voice.Text(temperature, "written");
}

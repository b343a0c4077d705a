using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Compare;

/// <summary>A kitchen in one line, for the head of its strip.</summary>
internal static class KitchenWords
{
    /// <param name="beside">The other kitchen: what most kitchens have alike is told only where the two differ in it.</param>
    public static string Of(Kitchen kitchen, Kitchen beside, Voice voice)
    {
        var air = kitchen.Air.At(Duration.Zero);
        var told = new List<string>
        {
            kitchen.Air.IsConstant ? voice.Text(air, "written") : voice.Say("compare.kitchen.air-at-first", ("air", voice.Text(air, "written"))),
            Show.Altitude(kitchen.Altitude, voice.Measures),
            voice.Say("compare.kitchen.tap", ("tap", voice.Text(kitchen.Tap, "written"))),
            kitchen.Shelf == air ? voice.Words["compare.kitchen.shelf-as-room"] : voice.Say("compare.kitchen.shelf", ("shelf", voice.Text(kitchen.Shelf, "written"))),
        };
        if (kitchen.ProofingPlace is { } place)
        {
            told.Add(voice.Say("compare.kitchen.proof", ("proof", voice.Text(place, "written"))));
        }

        if (kitchen.Fridge != beside.Fridge)
        {
            told.Add(voice.Say("compare.kitchen.fridge", ("fridge", voice.Text(kitchen.Fridge, "written"))));
        }

        told.Add(voice.Say("compare.kitchen.oven", ("mode", voice.Oven(kitchen.Oven))));
        return string.Join(voice.Words["list-comma"], told);
    }
}

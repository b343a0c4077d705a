using System.Globalization;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.TextForm;

/// <summary>A kitchen as a tree, everything said, in the order of the form.</summary>
internal static class KitchenWriter
{
    public static TextMapping Home(Kitchen kitchen) =>
        Settings(new TreeBuilder().Words(KitchenSection.Name, Named(kitchen)), kitchen).Mapping;

    public static TextMapping File(Kitchen kitchen) =>
        Settings(new TreeBuilder().Words(FormLine.Key, "1").Words(KitchenText.NameKey, Named(kitchen)), kitchen).Mapping;

    private static string? Named(Kitchen kitchen) => kitchen.Name.Length == 0 ? null : kitchen.Name;

    private static TreeBuilder Settings(TreeBuilder builder, Kitchen kitchen) => builder
        .Words(KitchenSection.Air, string.Join(", ", kitchen.Air.Knots.Select(Knot)))
        .Words(KitchenSection.Altitude, ExactText.OfAltitude(kitchen.Altitude))
        .Words(KitchenSection.Tap, ExactText.Of(kitchen.Tap))
        .Words(KitchenSection.Fridge, ExactText.Of(kitchen.Fridge))
        .Words(KitchenSection.Oven, EnumWords<OvenMode>.Of(kitchen.Oven))
        .Words(KitchenSection.OvenRuns, OvenGrammar.RunsText(kitchen.OvenTraits.OffDial))
        .Words(KitchenSection.OvenHeats, kitchen.OvenTraits.HeatsIn is { } heats ? ExactText.Of(heats) : null)
        .Words(KitchenSection.OvenRecovers, kitchen.OvenTraits.RecoversIn is { } recovers ? ExactText.Of(recovers) : null)
        .Words(KitchenSection.OvenSteam, kitchen.OvenTraits.Steam is var steam && steam == OvenTraits.Usual.Steam ? null : EnumWords<OvenSteam>.Of(steam))
        .Words(KitchenSection.Hearth, kitchen.OvenTraits.Hearth is { } hearth ? OvenGrammar.HearthText(hearth) : null)
        .Words(KitchenSection.Trays, kitchen.Trays.ToString(CultureInfo.InvariantCulture))
        .Words(KitchenSection.Scale, ExactText.Of(kitchen.Scale))
        .Words(KitchenSection.Ingredients, kitchen.Ingredients is { } ingredients ? ExactText.Of(ingredients) : null)
        .Words(KitchenSection.ProofingPlace, kitchen.ProofingPlace is { } proof ? ExactText.Of(proof) : null)
        .Keys(KitchenSection.Vessels, VesselsSection.Write(kitchen.Vessels));

    private static string Knot((Duration From, Temperature Air) knot) => knot.From == Duration.Zero
        ? ExactText.Of(knot.Air)
        : ExactText.Of(knot.Air) + KitchenSection.After + ExactText.Of(knot.From);
}

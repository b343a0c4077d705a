using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.App.Commands;

/// <summary>Single properties of a kitchen, laid over one. Null is as that kitchen has it.</summary>
/// <remarks>Shelf and proofing place of a kitchen follow its air wherever its text gives them no temperature of their own.</remarks>
internal sealed record KitchenOptions(
    AirProfile? Air,
    Temperature? Ingredients,
    Length? Altitude,
    OvenMode? Oven,
    Temperature? Tap,
    Temperature? Fridge,
    Temperature? Proof)
{
    private static readonly Dictionary<string, OvenMode> Modes = new() { ["fan"] = OvenMode.Fan, ["static"] = OvenMode.Static, ["deck"] = OvenMode.Deck };

    public bool IsEmpty => this == new KitchenOptions(null, null, null, null, null, null, null);

    public static KitchenOptions Read(Given given, Options options) => new(
        AirText.Read(given, options),
        given.Temperature(options.Ingredients, Limits.Air),
        given.Length(options.Altitude, Limits.Altitude),
        given.One(options.Oven) is { } oven ? given.Word(options.Oven.Name, oven, Modes) : null,
        given.Temperature(options.Tap, Limits.Tap),
        given.Temperature(options.Fridge, Limits.Fridge),
        given.Temperature(options.Proof, Limits.ProofingPlace));

    /// <summary>Whether a kitchen becomes another by them. What it has anyway is no change.</summary>
    public bool Change(Kitchen kitchen) => Over(kitchen) != kitchen;

    public Kitchen Over(Kitchen kitchen) => kitchen with
    {
        Air = Air ?? kitchen.Air,
        Ingredients = Ingredients ?? kitchen.Ingredients,
        Altitude = Altitude ?? kitchen.Altitude,
        Oven = Oven ?? kitchen.Oven,
        Tap = Tap ?? kitchen.Tap,
        Fridge = Fridge ?? kitchen.Fridge,
        ProofingPlace = Proof ?? kitchen.ProofingPlace,
    };
}

using Doughwright.Engine.Baking;
using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Heat.Warming;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>How an oven bakes: its kind and its traits, and what is done to it, as numbers. The one place for them: along one radius, over a section and in a case alike.</summary>
internal static class Ovens
{
    /// <summary>What still air and a fan give over all faces of a piece, W/(m² K). Source: oven-coefficient.</summary>
    private const double Still = 4.5;

    private const double Blown = 8;

    /// <summary>Share of what black walls all round would give: a home oven, and a deck, whose walls are near. Source: oven-coefficient, oven-deck.</summary>
    private const double Walls = 0.45;

    private const double NearWalls = 0.6;

    /// <summary>How much cooler the air is when the door has just been shut, K. Source: oven-door.</summary>
    private const double DoorDrop = 35;

    /// <summary>The air is back, all but a twentieth (e⁻³), after so many time constants.</summary>
    private const double ConstantsToRecover = 3;

    private static readonly Duration UsualRecovery = Duration.FromMinutes(3);

    /// <summary>From a room to 200 °C. Source: oven-preheat, oven-deck.</summary>
    private const double UsualHeatingMinutes = 12;

    private const double DeckHeatingMinutes = 45;

    /// <summary>The span of that, K.</summary>
    public const double HeatingSpan = 200 - OvenChange.Room;

    /// <summary>A deck oven that is switched off falls by some 30 K in an hour from 230 °C, s. Source: oven-deck.</summary>
    private const double DeckCoolsSeconds = 25_000;

    /// <summary>Share of vapour in the air while it steams: a pan of boiling water, and a boiler that drives most of the air out. Source: oven-steam.</summary>
    private const double PanSteam = 0.4;

    private const double BoilerSteam = 0.8;

    /// <summary>Between a hearth and what lies on it, W/(m² K). Source: oven-hearth.</summary>
    private const double Contact = 150;

    /// <summary>From a home oven to the under side of a stone on its rack, and from the element to the sole of a deck, W/(m² K). Source: oven-hearth.</summary>
    private const double UnderRack = 20;

    private const double UnderSole = 60;

    /// <summary>What is hot of an oven by its kind, nothing said of it.</summary>
    public static RadialOven Of(OvenMode mode, double celsius) => Of(mode, OvenTraits.Usual, celsius);

    /// <param name="mode">How it is set.</param>
    /// <param name="celsius">Inside, however far that is from the dial.</param>
    public static RadialOven Of(OvenMode mode, OvenTraits traits, double celsius) =>
        new(celsius, mode == OvenMode.Fan ? Blown : Still, mode == OvenMode.Deck ? NearWalls : Walls)
        {
            DoorDrop = DoorDrop,
            DoorSeconds = (traits.RecoversIn ?? UsualRecovery).Seconds / ConstantsToRecover,
        };

    /// <summary>The oven of this kitchen as the piece of a step meets it: its bias, a second dial, steam, a hot stone below, a lid.</summary>
    /// <param name="celsius">Inside, as <see cref="OvenDials.Inside"/> tells.</param>
    /// <param name="under">Share of the piece's surface that lies on what is under it.</param>
    public static RadialOven For(Step step, Stage stage, double celsius, double under)
    {
        var (kitchen, mode) = (stage.Kitchen, stage.ModeOf(step.Oven));
        var oven = Of(mode, kitchen.OvenTraits, celsius);
        return oven with
        {
            Change = step.Oven is { Then: { } then } ? Change(mode, kitchen.OvenTraits, then.After, OvenDials.InsideThen(step.Oven, stage) - OvenDials.Inside(step.Oven, stage)) : null,
            Steam = step.Steam is null ? oven.Steam : VapourOf(kitchen.OvenTraits.Steam, stage.Pressure),
            SteamSeconds = step.Steam is { } steam && kitchen.OvenTraits.Steam != OvenSteam.None ? steam.Seconds : 0,
            Hearth = step.On == BakedOn.Stone && HearthOf(kitchen) is { } hearth ? Slab(mode, hearth, under) : null,
            LidSeconds = step.LidOff?.Seconds ?? 0,
        };
    }

    /// <param name="by">K.</param>
    public static OvenChange Change(OvenMode mode, OvenTraits traits, Duration after, double by) => new(
        after.Seconds,
        by,
        mode == OvenMode.Deck ? DeckCoolsSeconds : Enclosure.Oven.WallJoulesPerKelvin.Likely / Enclosure.Oven.WattsPerKelvin.Likely,
        HeatingSpan / (60 * HeatingMinutes(mode, traits)));

    /// <summary>Pressure of vapour while it steams, Pa. The oven is open to the air, so there is never more than the air presses.</summary>
    public static double VapourOf(OvenSteam steam, Pressure air) => (steam == OvenSteam.BuiltIn ? BoilerSteam : PanSteam) * air.Pascals;

    /// <summary>Minutes from a room to 200 °C.</summary>
    public static double HeatingMinutes(OvenMode mode, OvenTraits traits) => traits.HeatsIn?.Minutes ?? (mode == OvenMode.Deck ? DeckHeatingMinutes : UsualHeatingMinutes);

    /// <summary>What a piece can stand on in this kitchen's oven; null for nothing but trays and racks.</summary>
    public static Hearth? HearthOf(Kitchen kitchen) => HearthOf(kitchen.Oven, kitchen.OvenTraits);

    public static Hearth? HearthOf(OvenMode kind, OvenTraits traits) =>
        traits.Hearth ?? (kind == OvenMode.Deck ? new(HearthMaterial.Stone, Length.FromMillimetres(20)) : null);

    /// <summary>A hearth as numbers. Stone is fireclay of 1.5 W/(m K), steel plain carbon steel. Source: oven-hearth.</summary>
    public static OvenHearth Slab(OvenMode mode, Hearth hearth, double under)
    {
        var below = mode == OvenMode.Deck ? UnderSole : UnderRack;
        return hearth.Material == HearthMaterial.Steel
            ? new(under, Contact, hearth.Thick?.Metres ?? 0.006, 60.5, 7854.0 * 434, below)
            : new(under, Contact, hearth.Thick?.Metres ?? 0.015, 1.5, 2300.0 * 880, below);
    }
}

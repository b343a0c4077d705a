using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>A kitchen: the home of a recipe, or a file of its own with the same keys.</summary>
internal static class KitchenSection
{
    public const string Name = "name";
    public const string Air = "air";
    public const string Altitude = "altitude";
    public const string Tap = "tap";
    public const string Fridge = "fridge";
    public const string Oven = "oven";
    public const string OvenRuns = "oven runs";
    public const string OvenHeats = "oven heats in";
    public const string OvenRecovers = "oven recovers in";
    public const string OvenSteam = "oven steam";
    public const string Hearth = "hearth";
    public const string Trays = "trays";
    public const string Scale = "scale";
    public const string Ingredients = "ingredients";
    public const string ProofingPlace = "proofing place";
    public const string Vessels = "vessels";
    public const string After = " after ";

    public static IReadOnlyList<string> Keys { get; } = [Air, Altitude, Tap, Fridge, Oven, OvenRuns, OvenHeats, OvenRecovers, OvenSteam, Hearth, Trays, Scale, Ingredients, ProofingPlace, Vessels];

    /// <summary>What stands in where the air cannot be read. An error finding always stands beside it.</summary>
    public static AirProfile StandIn { get; } = AirProfile.Constant(Temperature.FromCelsius(21));

    /// <summary>The kitchen, and whether its air is known: everything else has a usual value, this has none.</summary>
    public static (Kitchen Kitchen, bool AirKnown) Read(Section section, string name, Position position, FindingLog log)
    {
        if (!section.Has(Air))
        {
            log.Wrong(FormFaults.AirMissing, section.Place, position);
        }

        var air = section.Words(Air) is { } words ? ReadAir(words) : null;
        var kitchen = new Kitchen { Name = name, Air = air ?? StandIn };
        return (kitchen with
        {
            Altitude = section.Words(Altitude)?.Length(Limits.Altitude) is { } altitude && Limits.Altitude.Holds(altitude) ? altitude : kitchen.Altitude,
            Tap = section.Words(Tap)?.Temperature(Limits.Tap) ?? kitchen.Tap,
            Fridge = section.Words(Fridge)?.Temperature(Limits.Fridge) ?? kitchen.Fridge,
            Oven = section.Words(Oven)?.Word<OvenMode>() ?? kitchen.Oven,
            OvenTraits = ReadTraits(section),
            Trays = section.Words(Trays)?.Count(Limits.Trays) ?? kitchen.Trays,
            Scale = section.Words(Scale)?.Mass(Limits.Scale) is { } scale && Limits.Scale.Holds(scale) ? scale : kitchen.Scale,
            Ingredients = section.Words(Ingredients)?.Temperature(Limits.Air),
            ProofingPlace = section.Words(ProofingPlace)?.Temperature(Limits.ProofingPlace),
            Vessels = VesselsSection.Read(section.Keys(Vessels), section.PlaceOf(Vessels), log),
        }, air is not null);
    }

    private static OvenTraits ReadTraits(Section section)
    {
        var usual = OvenTraits.Usual;
        return usual with
        {
            OffDial = section.Words(OvenRuns) is { } runs ? OvenGrammar.Runs(runs) : null,
            HeatsIn = section.Words(OvenHeats)?.Duration(Limits.OvenHeats),
            RecoversIn = section.Words(OvenRecovers)?.Duration(Limits.OvenRecovers),
            Steam = section.Words(OvenSteam)?.Word<OvenSteam>() ?? usual.Steam,
            Hearth = section.Words(Hearth) is { } hearth ? OvenGrammar.Hearth(hearth) : null,
        };
    }

    /// <summary>"21 C", or a course over elapsed time: "17 C, 21 C after 9 h".</summary>
    public static AirProfile? ReadAir(Phrase words, Limit<Temperature>? limit = null)
    {
        var knots = new List<(Duration From, Temperature Air)>();
        foreach (var piece in words.Split())
        {
            var (said, from) = piece.Around(After) is var (before, after) ? (before, after.Duration(Limits.Hands)) : (piece, Duration.Zero);
            if (said.Temperature(limit ?? Limits.Air) is not { } air || from is not { } time)
            {
                return null;
            }

            if (knots.Count == 0 ? time != Duration.Zero : time <= knots[^1].From)
            {
                piece.Fault(FormFaults.AirNotUnderstood);
                return null;
            }

            knots.Add((time, air));
        }

        return AirProfile.Of(knots);
    }
}

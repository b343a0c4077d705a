using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Where a piece stands after the oven: turned out onto a rack, as long as its step names no vessel that it lies in.</summary>
/// <param name="Celsius">Of the air, the mean over the step.</param>
/// <param name="Exchange">Times what an open rack takes.</param>
/// <param name="Emissivity">Over all faces.</param>
/// <param name="Shut">Share of the surface from which no vapour gets away.</param>
/// <param name="InTin">Whether it stays in its tin.</param>
internal sealed record Rack(double Celsius, double Exchange, double Emissivity, double Shut, bool InTin)
{
    public static Rack Open(double celsius) => new(celsius, 1, RackLaws.Crust, 0, InTin: false);

    /// <summary>Null where nothing tells how a loaf cools: in an oven, on the hob, in water.</summary>
    public static Rack? Of(StepInput input, Portion baked)
    {
        var step = input.Step;
        if (step.Where is not (Where.Room or Where.ProofingPlace or Where.Fridge))
        {
            return null;
        }

        var minutes = StatedTime.Of(step) is > 0 and var stated ? stated : UsualMinutes;
        var air = input.Air.MeanOver(Duration.FromMinutes(minutes)).Celsius;
        var inTin = step.Vessel?.Shape == VesselShape.Tin;
        var exchange = (step.Cover != Cover.Open || step.Where == Where.Fridge ? RackLaws.Sheltered : 1) / (inTin ? Holds(step.Vessel!, baked) : 1);
        // Of what is in a tin all but the top is shut, of what is on a tray what lies on it.
        var lies = baked.Hot?.Piece.Under ?? UnderSide.Usual;
        var shut = inTin ? 1 - lies : step.Vessel?.Shape is VesselShape.Tray or VesselShape.Board ? lies : 0;
        var emissivity = inTin ? (shut * RackLaws.Tin) + ((1 - shut) * RackLaws.Crust) : RackLaws.Crust;
        return new(air, exchange, emissivity, step.Cover == Cover.Covered ? 1 : shut, inTin);
    }

    /// <summary>Minutes over which the air is told where nobody says how long.</summary>
    private const double UsualMinutes = 60;

    /// <summary>In every lane, of pieces that go by one clock.</summary>
    /// <param name="lanes">As they baked.</param>
    /// <param name="takes">What is taken from them, against the default and by that clock.</param>
    /// <param name="airs">°C about each; null for that of here.</param>
    public RadialLanes Around(RadialLanes lanes, double[] takes, double[]? airs = null)
    {
        airs ??= Every(Celsius);
        double[] Every(double value)
        {
            var values = new double[lanes.Count];
            Array.Fill(values, value);
            return values;
        }

        return lanes with
        {
            Convective = Every(Exchange * RackLaws.StillAir),
            Radiative = Every(Exchange * Emissivity),
            Oven = airs,
            Vapour = [.. airs.Select(Vapour)],
            DoorDrop = Every(0),
            Open = Every(1 - Shut),
            Transfer = takes,
            SteamSeconds = 0,
            LidSeconds = 0,
            Change = null,
            Hearth = null,
        };
    }

    /// <summary>In the air of a room that is so warm, Pa: a loaf that is nearly as cold as it gives off no more than that lets it.</summary>
    private static double Vapour(double celsius) => OpenFaces.Room * SaturatedWater.PressureAt(Temperature.FromCelsius(celsius)).Pascals;

    /// <summary>A tin holds heat too: with it there is so many times as much to give off.</summary>
    private static double Holds(Vessel tin, Portion baked) => 1 + ((DefaultHeats.JoulesPerKelvinOf(tin) ?? 0) * Tins(baked) / baked.JoulesPerKelvin);

    /// <summary>What is written is one tin; several loaves have one each.</summary>
    private static int Tins(Portion baked) => baked.Shape == Shapes.PieceShape.TinLoaf ? baked.Pieces : 1;
}

using Doughwright.Engine.Baking.Sections;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>One piece in one oven, all of one lane.</summary>
internal sealed record RadialPiece
{
    public required BakingDough Dough { get; init; }

    /// <summary>Of one piece.</summary>
    public required Mass Mass { get; init; }

    /// <summary>As risen, m³; at least what the dough takes without gas.</summary>
    public required double CubicMetres { get; init; }

    public required RadialForm Form { get; init; }

    public required Temperature Start { get; init; }

    public required Pressure Pressure { get; init; }

    public required double Effectiveness { get; init; }

    /// <summary>s/m.</summary>
    public required double Skin { get; init; }

    public required RadialOven Oven { get; init; }

    public double Transfer { get; init; } = 1;

    /// <summary>A share of the surface that a tin or a tray keeps shut.</summary>
    public double Shut { get; init; }

    public static RadialLanes Lanes(IReadOnlyList<RadialPiece> pieces)
    {
        var count = Numerics.Lanes.Padded(pieces.Count);
        double[] Column(Func<RadialPiece, double> take)
        {
            var values = new double[count];
            for (var lane = 0; lane < count; lane++)
            {
                values[lane] = take(pieces[Math.Min(lane, pieces.Count - 1)]);
            }

            return values;
        }

        return new()
        {
            Start = Column(piece => piece.Start.Celsius),
            Solids = Column(piece => piece.Mass.Grams / 1000 / (1 + piece.Dough.Water) / piece.CubicMetres),
            Reach = Column(piece => piece.Form.ReachOfUnitVolume * Elementary.Pow(piece.CubicMetres, 1.0 / 3)),
            Water = Column(piece => piece.Dough.Water),
            Heat = Column(piece => piece.Dough.Heat),
            HeatSlope = Column(piece => piece.Dough.HeatSlope),
            Conductivity = Column(piece => piece.CrumbConductivity),
            Gas = Column(piece => piece.GasShare),
            Boil = Column(piece => SaturatedWater.BoilingPoint(piece.Pressure).Celsius),
            Pressure = Column(piece => piece.Pressure.Pascals),
            Effectiveness = Column(piece => piece.Effectiveness),
            Skin = Column(piece => piece.Skin),
            Open = Column(piece => 1 - piece.Shut),
            Convective = Column(piece => piece.Oven.Convective),
            Radiative = Column(piece => piece.Oven.Radiative),
            Oven = Column(piece => piece.Oven.Celsius),
            DoorDrop = Column(piece => piece.Oven.DoorDrop),
            Steam = Column(piece => piece.Oven.Steam),
            Transfer = Column(piece => piece.Transfer),
            SteamSeconds = pieces[0].Oven.SteamSeconds,
            DoorSeconds = pieces[0].Oven.DoorSeconds,
            Change = pieces[0].Oven.Change,
            Hearth = pieces[0].Oven.Hearth,
            LidSeconds = pieces[0].Oven.LidSeconds,
        };
    }

    private double GasShare => Math.Max(0, 1 - (Mass.Grams / 1000 / CubicMetres / Dough.Density));

    private double CrumbConductivity => Math.Max(
        CrumbLaws.Standard.LeastConductivity,
        new ThermalProperties(
            SpecificHeat.FromJoulesPerGramKelvin(1),
            Density.FromKilogramsPerCubicMetre(Dough.Density),
            Conductivity.FromWattsPerMetreKelvin(Dough.Conductivity)).WithGas(GasShare).Conductivity.WattsPerMetreKelvin);
}

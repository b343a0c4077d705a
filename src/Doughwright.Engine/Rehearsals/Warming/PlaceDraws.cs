using Doughwright.Engine.Heat.Warming;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Rehearsals.Warming;

/// <summary>The assumed figures of a warm place in every lane. They have quasi-random dimensions of their own, beside those of the rehearsal.</summary>
internal sealed class PlaceDraws(int lanes)
{
    // Past those of the rehearsal's own parameters.
    private const int WallsDimension = 27;
    private const int SkinDimension = 28;
    private const int JugDimension = 29;

    public PerLane Walls(Enclosure enclosure) => Of(enclosure.WattsPerKelvin, WallsDimension);

    public PerLane Skin(Enclosure enclosure) => Of(enclosure.WallJoulesPerKelvin, SkinDimension);

    public PerLane Jug => Of(WaterVessel.Exchange, JugDimension);

    private PerLane Of(Guess guess, int dimension) =>
        new PerLane(Draws.Normal(dimension, lanes)).Map(z => guess.Likely * Elementary.Exp(guess.SdLn * z));
}

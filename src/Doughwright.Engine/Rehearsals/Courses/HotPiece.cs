using Doughwright.Engine.Heat;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;
using Doughwright.Engine.Shapes;

namespace Doughwright.Engine.Rehearsals.Courses;

/// <summary>
/// A baked piece that gives its heat to the air: of its shape, as risen as when it went in, evenly as warm as its mean, with radiation and natural
/// convection from a dry crust. Nobody measures it, so it is computed for the picture and told nowhere. Source: hot-surfaces.
/// </summary>
internal sealed class HotPiece
{
    private const int Steps = 48;

    private readonly Body body;

    private HotPiece(Body body) => this.body = body;

    /// <param name="baked">The portion after the bake.</param>
    /// <param name="risen">The dough as it went in; null when it did not rise.</param>
    public static HotPiece? Of(Portion baked, DoughState? risen)
    {
        if (ThermalProperties.Of(baked.Composition, Temperature.FromCelsius(60)) is not { } known)
        {
            return null;
        }

        var gas = risen is null ? Bodies.AirAfterMixing : 1 - (1 / baked.Swollen(risen.VolumePerGasFree.Central));
        var properties = known with { SpecificHeat = SpecificHeat.FromJoulesPerGramKelvin(baked.JoulesPerKelvin / baked.Mass.Grams) };
        var (mass, raw) = (baked.Mass / baked.Pieces, Body.VolumeOf(baked.Mass / baked.Pieces, properties));
        var form = PieceForms.Of(baked.Shape ?? PieceShape.Ball, raw, Body.VolumeOf(mass, properties.WithGas(gas)) / raw, baked.Vessel?.Size);
        return new(Body.Of(form, properties.WithGas(gas)));
    }

    public IReadOnlyList<WayPoint> Cool(double celsius, AirProfile air, Where where, double minutes)
    {
        if (minutes <= 0)
        {
            return [new(0, celsius, null), new(0, celsius, null)];
        }

        var exchange = where == Where.Fridge ? ExchangeCoefficient.StillFridge : ExchangeCoefficient.CoveredHot;
        var step = Duration.FromMinutes(minutes / Steps);
        var (around, mean) = (new double[Steps], new double[Steps]);
        for (var index = 0; index < Steps; index++)
        {
            around[index] = air.At(step * (index + 0.5)).Celsius;
        }

        Bodies.Begin(body, new([celsius], [exchange.WattsPerSquareMetreKelvin]), step).Advance(around, mean);
        return [new(0, celsius, null), .. mean.Select((warmth, index) => new WayPoint(index == Steps - 1 ? minutes : step.Minutes * (index + 1), warmth, null))];
    }
}

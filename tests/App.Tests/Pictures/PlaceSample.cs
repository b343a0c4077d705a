using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Warming;

namespace Doughwright.App.Tests.Pictures;

/// <summary>A place made by hand: water that loses its distance from the room, air between both, a dough that follows.</summary>
internal static class PlaceSample
{
    public static (PlaceAdvice Advice, PlaceAnswer Place) Of(PlaceKind kind)
    {
        var lead = kind == PlaceKind.WaterBath ? 0 : 20;
        var points = Enumerable.Range(0, ((90 + lead) / 2) + 1).Select(index => Point((2 * index) - lead, kind)).ToList();
        var place = new PlaceAnswer
        {
            Kind = kind,
            Reaches = true,
            Water = Mass.FromKilograms(3),
            WaterTemperature = points[0].Water,
            Lead = Duration.FromMinutes(lead),
            RenewEvery = kind == PlaceKind.WaterBath ? Duration.FromMinutes(45) : null,
            Renewals = kind == PlaceKind.WaterBath ? 1 : 0,
            Mean = Spread(26, 1.5),
            DoughEnd = points[^1].Dough!.Value,
            DoughMean = Spread(24.5, 1),
            PlaceWithin = Duration.FromMinutes(60),
            DoughWithin = Duration.FromMinutes(20),
            Time = null,
            Course = points,
            Cautions = [],
            RestsOn = [],
        };
        var advice = new PlaceAdvice
        {
            Step = "bulk",
            Target = Temperature.FromCelsius(26),
            Room = Temperature.FromCelsius(17),
            DoughStart = Temperature.FromCelsius(23.8),
            AtTarget = null,
            InRoom = null,
            RoomAgainstTarget = null,
            TooCold = null,
            TooWarm = null,
            DoughTooCold = null,
            DoughTooWarm = null,
            RoomDoes = false,
            Places = [place],
        };
        return (advice, place);
    }

    private static PlacePoint Point(double minute, PlaceKind kind)
    {
        var dough = minute < 0 ? default(Estimate<Temperature>?) : Spread(25 - (1.2 * Math.Exp(-minute / 60)), 0.4 + (minute / 200));
        if (kind == PlaceKind.WaterBath)
        {
            var bath = 27 - (minute % 45 / 45 * 2);
            return new(Duration.FromMinutes(minute), Temperature.FromCelsius(17), Temperature.FromCelsius(bath), Spread(bath, 0.3), dough);
        }

        var water = 17 + (33 * Math.Exp(-(minute + 20) / 150));
        var air = 17 + (10 * (1 - Math.Exp(-(minute + 20) / 12)) * Math.Exp(-(minute + 20) / 600));
        return new(Duration.FromMinutes(minute), Temperature.FromCelsius(17), Temperature.FromCelsius(water), Spread(air, (air - 17) / 6), dough);
    }

    private static Estimate<Temperature> Spread(double likely, double by) =>
        new(Temperature.FromCelsius(likely), Temperature.FromCelsius(likely - by), Temperature.FromCelsius(likely + by));
}

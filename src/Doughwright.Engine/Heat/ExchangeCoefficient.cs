using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>
/// How readily heat passes between the outer area of a body and what surrounds it, radiation included. A default is a guess with a spread,
/// replaced by what the author's measured minutes say.
/// </summary>
/// <param name="WattsPerSquareMetreKelvin">Central value, h.</param>
/// <param name="SdLn">Standard deviation of ln h.</param>
internal sealed record ExchangeCoefficient(double WattsPerSquareMetreKelvin, double SdLn)
{
    private const double StillAirConvection = 4;
    private const double RoomHumidity = 0.5;

    /// <summary>A covered bowl, over its whole outer area. Source: exchange-defaults.</summary>
    public static ExchangeCoefficient Covered { get; } = new(8, 0.25);

    /// <summary>
    /// A covered bowl of something hot, from about 50 °C at the start: at a mean surface of 45 to 60 °C radiation (6) and natural
    /// convection (5) alone make about 11. Source: hot-surfaces.
    /// </summary>
    public static ExchangeCoefficient CoveredHot { get; } = new(11, 0.3);

    /// <summary>Pieces under a cloth. Source: exchange-defaults.</summary>
    public static ExchangeCoefficient Cloth { get; } = new(8, 0.25);

    /// <summary>A fridge without a fan. Source: exchange-defaults.</summary>
    public static ExchangeCoefficient StillFridge { get; } = new(8, 0.25);

    /// <summary>A fridge with a fan. Source: exchange-defaults.</summary>
    public static ExchangeCoefficient FanFridge { get; } = new(15, 0.25);

    /// <summary>Standing in tap water, stirred now and then. Source: exchange-defaults.</summary>
    public static ExchangeCoefficient WaterBath { get; } = new(200, 0.4);

    /// <summary>
    /// Open in the room: as covered, plus evaporation from the wet part of the outer area at the temperature half way between start and
    /// target, in air of 50 % humidity. Rough, hence the wide spread. Where the middle is not warmer than the air by 1 K, evaporation is
    /// left out. Source: lewis-evaporation.
    /// </summary>
    /// <param name="wetShare">Share of the outer area that is open and wet: one third for a bowl, one half for a tray.</param>
    public static ExchangeCoefficient Open(Temperature start, Temperature target, Temperature air, double wetShare)
    {
        var middle = Temperature.FromCelsius((start.Celsius + target.Celsius) / 2);
        var extra = (middle - air).Kelvins < 1
            ? 0
            : wetShare * Evaporation.ExtraCoefficient(StillAirConvection, middle, air, RoomHumidity, waterActivity: 1);
        return new(Covered.WattsPerSquareMetreKelvin + extra, 0.4);
    }

    /// <summary>How many standard deviations of ln h a coefficient lies from this expectation, with its sign.</summary>
    public double StandardDeviationsOff(double wattsPerSquareMetreKelvin) =>
        Elementary.Log(wattsPerSquareMetreKelvin / WattsPerSquareMetreKelvin) / SdLn;
}

using Doughwright.Engine.Quantities;

namespace Doughwright.Publishing.Pictures.Drawing;

/// <summary>The class that colours a temperature: one for each degree below 60, two degrees to 100, ten degrees above. tokens.css holds the colours.</summary>
internal static class Warmth
{
    private const double Coldest = 0;
    private const double Hottest = 230;

    /// <summary>Colours end at 0 and 230 °C: what is beyond is drawn as the last of them, and its figure stands beside it.</summary>
    public static string Class(Temperature temperature)
    {
        var celsius = Math.Clamp(temperature.Celsius, Coldest, Hottest);
        var step = celsius < 60 ? 1 : celsius < 100 ? 2 : 10;
        return "w" + Svg.Number(Math.Round(celsius / step, MidpointRounding.AwayFromZero) * step);
    }
}

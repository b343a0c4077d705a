using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.TextForm;

/// <summary>Sizes of vessels as people write them: "30 x 11 x 10 cm", "24 x 7 cm", "3 l". The unit stands once, at the end.</summary>
public static class VesselSizeText
{
    private static readonly string[] Units = ["mm", "cm", "m", "in", "ft"];

    /// <summary>Whether some words mean a size, well written or not, and no mass.</summary>
    internal static bool IsMeant(string words) => (words.Contains('x') && words.Any(char.IsAsciiDigit)) || QuantityText.TryVolume(words).Ok;

    /// <summary>Reads a size. Null when it cannot be one: an unknown unit, a number that is none, or a side of nothing.</summary>
    /// <param name="shape">Two numbers are length and width of a tray, and across and deep of anything else.</param>
    public static VesselSize? Read(string words, VesselShape shape)
    {
        if (QuantityText.TryVolume(words).Value is { Litres: > 0 } volume)
        {
            return new(null, null, null, volume);
        }

        var unit = Units.FirstOrDefault(symbol => words.EndsWith(symbol, StringComparison.Ordinal) && char.IsAsciiDigit(Before(words, symbol)));
        if (unit is null)
        {
            return null;
        }

        var sides = words[..^unit.Length].Split('x').Select(side => QuantityText.TryLength($"{side.Trim()} {unit}").Value).ToArray();
        return sides.Any(side => side is not { Metres: > 0 }) ? null : sides switch
        {
            [var length, var width, var depth] => new(length, width, depth, null),
            [var length, var width] when shape == VesselShape.Tray => new(length, width, null, null),
            [var across, var depth] => new(across, null, depth, null),
            _ => null,
        };
    }

    /// <summary>The size as it is read back, sides in centimetres or inches, whichever are shorter to write.</summary>
    public static string Write(VesselSize size)
    {
        var sides = new[] { size.Long, size.Wide, size.Deep }.OfType<Length>().ToArray();
        if (sides.Length == 0)
        {
            return NumberText.Exact(size.Stated!.Value.Litres) + " l";
        }

        (string Symbol, double Metres)[] units = [("cm", 0.01), ("in", 0.0254), ("mm", 0.001)];
        return units.Select(unit => In(sides, unit.Symbol, unit.Metres)).OfType<string>().MinBy(text => text.Length)
            ?? string.Join(" x ", sides.Select(side => NumberText.Exact(side.Metres))) + " m";
    }

    private static string? In(Length[] sides, string symbol, double metres)
    {
        var numbers = sides.Select(side => NumberText.Exact(Math.Round(side.Metres / metres, 3))).ToArray();
        var same = numbers.Zip(sides).All(pair => QuantityText.TryLength($"{pair.First} {symbol}").Value == pair.Second);
        return same ? $"{string.Join(" x ", numbers)} {symbol}" : null;
    }

    private static char Before(string words, string unit) => words[..^unit.Length].TrimEnd() is { Length: > 0 } rest ? rest[^1] : ' ';
}

using Doughwright.Engine.Quantities;

namespace Doughwright.Publishing.Pictures.Heat;

/// <summary>Heat as a figure, fine enough for its size.</summary>
internal static class Kilojoules
{
    /// <summary>One decimal from 1 kJ, two below.</summary>
    public static string Text(double kilojoules) => Show.Number(kilojoules, Math.Abs(kilojoules) >= 1 ? 1 : 2);

    /// <summary>With its sign, for what gives (+) and takes (−).</summary>
    public static string Signed(double kilojoules, int decimals)
    {
        var text = Show.Number(kilojoules, decimals);
        return text.Any(digit => digit is >= '1' and <= '9') && kilojoules > 0 ? "+" + text : text;
    }
}

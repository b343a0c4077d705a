using System.Globalization;

namespace Doughwright.Engine.Quantities;

/// <summary>Ounces and pounds as kitchens read them: eighths under one ounce, quarters above, pounds from sixteen.</summary>
internal static class Ounces
{
    private const double GramsPerOunce = 28.349523125;
    private const double LargestError = 0.03;

    /// <summary>Null where no step comes within 3 %: then grams are the honest print.</summary>
    public static string? Text(Mass mass)
    {
        var ounces = Math.Abs(mass.Grams) / GramsPerOunce;
        var steps = ounces < 1 ? 8 : 4;
        var eighths = (long)Math.Round(ounces * steps, MidpointRounding.AwayFromZero) * (8 / steps);
        if (mass.Grams <= 0 || Math.Abs((eighths / 8.0) - ounces) > LargestError * ounces)
        {
            return null;
        }

        var (pounds, rest) = (eighths / 128, eighths % 128);
        return pounds == 0 ? Mixed(rest) + "\u00a0oz"
            : rest == 0 ? Whole(pounds) + "\u00a0lb"
            : $"{Whole(pounds)}\u00a0lb {Mixed(rest)}\u00a0oz";
    }

    private static string Mixed(long eighths) => MixedNumber.Text(eighths / 8.0)!;

    private static string Whole(long value) => value.ToString("N0", CultureInfo.InvariantCulture);
}

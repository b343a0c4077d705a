using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>Rounds a mass to what the scale shows; one that this would move by more than a fiftieth to a tenth of that, a trace more finely still.</summary>
internal static class ScaleStep
{
    private const double Most = 0.02;
    private const double MostOfATrace = 0.1;
    private const double Finest = 0.001;

    public static Mass Round(Mass mass, Mass scale)
    {
        // By how many steps a gram is divided, in whole numbers, so that 6.2 is the 6.2 that a person types.
        var parts = 1m / (decimal)Math.Max(scale.Grams, Finest);
        var rounded = Rounded(mass, parts);
        for (var most = Most; Math.Abs(rounded - mass.Grams) > most * Math.Abs(mass.Grams) && parts * (decimal)Finest < 1; most = MostOfATrace)
        {
            parts *= 10;
            rounded = Rounded(mass, parts);
        }

        return Mass.FromGrams(rounded);
    }

    /// <summary>The same, never outside two masses: as fine as that takes, and what lies on the edge as it is.</summary>
    public static Mass Within(Mass mass, double low, double high, Mass scale)
    {
        for (var step = scale; step.Grams > Finest; step *= 0.1)
        {
            if (Round(mass, step) is var rounded && rounded.Grams >= low && rounded.Grams <= high)
            {
                return rounded;
            }
        }

        return mass;
    }

    private static double Rounded(Mass mass, decimal parts) => (double)(Math.Round((decimal)mass.Grams * parts, MidpointRounding.AwayFromZero) / parts);
}

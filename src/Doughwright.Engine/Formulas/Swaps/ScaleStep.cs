using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>Rounds a mass to what the scale shows; a small one more finely, so that no dose moves by more than a fiftieth.</summary>
internal static class ScaleStep
{
    private const double Most = 0.02;
    private const double Finest = 0.001;

    public static Mass Round(Mass mass, Mass scale)
    {
        // By how many steps a gram is divided, in whole numbers, so that 6.2 is the 6.2 that a person types.
        for (var parts = 1m / (decimal)Math.Max(scale.Grams, Finest); ; parts *= 10)
        {
            var rounded = (double)(Math.Round((decimal)mass.Grams * parts, MidpointRounding.AwayFromZero) / parts);
            if (Math.Abs(rounded - mass.Grams) <= Most * Math.Abs(mass.Grams) || parts > (decimal)(1 / Finest))
            {
                return Mass.FromGrams(rounded);
            }
        }
    }
}

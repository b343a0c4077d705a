using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>Ounces as a scale shows them. Source: ounce-steps.</summary>
/// <param name="Hundredths">Of an ounce, in one step.</param>
internal sealed record OunceScale(int Hundredths)
{
    private const double GramsPerOunce = 28.349523125;
    private const int PerOunce = 100;
    private const int ShownDecimals = 3;
    private const int OuncesPerPound = 16;

    private static readonly int[] Steps = [5, 10, 25, 50, 100];

    public Mass Step => Mass.FromGrams(Hundredths * GramsPerOunce / PerOunce);

    /// <summary>The finest step that is no finer than the scale in grams: a scale of 1 g shows 0.05 oz, one of 2 g shows 0.1 oz.</summary>
    public static OunceScale For(Mass scale) =>
        new(Steps.FirstOrDefault(step => step * GramsPerOunce / PerOunce >= scale.Grams, Steps[^1]));

    /// <summary>Whether a scale shows ounces: no step of theirs is a whole number of milligrams.</summary>
    public static bool IsOf(Mass scale) => Math.Abs((scale.Grams * 1000) - Math.Round(scale.Grams * 1000, MidpointRounding.AwayFromZero)) > 1e-6;

    /// <summary>A step of a scale in ounces: "0.25 oz".</summary>
    public static string Shown(Mass scale) => NumberText.Exact(Math.Round(scale.Grams / GramsPerOunce, ShownDecimals)) + " oz";

    public static bool IsMeant(string typed) => typed.Contains("oz", StringComparison.Ordinal) || typed.Contains("lb", StringComparison.Ordinal);

    /// <summary>"6 oz", "1 lb 12 oz", "2 lb".</summary>
    public string Text(long units)
    {
        var hundredths = units * Hundredths;
        var (pounds, rest) = (hundredths / (PerOunce * OuncesPerPound), hundredths % (PerOunce * OuncesPerPound));
        var ounces = NumberText.Exact(rest / (double)PerOunce) + " oz";
        return pounds == 0 ? ounces : rest == 0 ? NumberText.Exact(pounds) + " lb" : $"{NumberText.Exact(pounds)} lb {ounces}";
    }
}

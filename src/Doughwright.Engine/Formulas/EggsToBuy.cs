namespace Doughwright.Engine.Formulas;

/// <summary>Eggs to buy where some go in whole and some in part. Whole numbers: half an egg is a whole one bought.</summary>
/// <param name="All">All of them.</param>
/// <param name="YolkOnly">Those of which only the yolk is used.</param>
/// <param name="WhiteOnly">Those of which only the white is used.</param>
public sealed record EggsToBuy(int All, int YolkOnly, int WhiteOnly)
{
    /// <summary>Eggs differ by more than this, so 2.1 of them are two.</summary>
    private const double Slack = 0.15;

    /// <param name="whole">How many go in whole.</param>
    internal static EggsToBuy Of(double whole, double yolks, double whites)
    {
        var (yolk, white) = (Count(yolks), Count(whites));
        return new(Count(whole) + Math.Max(yolk, white), Math.Max(0, yolk - white), Math.Max(0, white - yolk));
    }

    private static int Count(double pieces) => (int)Math.Ceiling(Math.Max(0, pieces - Slack));
}

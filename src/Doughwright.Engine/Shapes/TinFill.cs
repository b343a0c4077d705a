using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Shapes;

/// <summary>How full a dough makes a tin.</summary>
/// <param name="CubicCentimetresPerGram">Room of the tin for each gram of dough.</param>
internal readonly record struct TinFill(double CubicCentimetresPerGram)
{
    /// <summary>Below, a wheat dough runs over; a trade's tin has 4.4, a wholegrain baker's 3.1. Source: pan-volume.</summary>
    public const double Least = 2.8;

    /// <summary>Above, it does not come to the rim. Source: pan-volume.</summary>
    public const double Most = 4.6;

    public static TinFill Of(Volume tin, Mass dough) => new(1000 * tin.Litres / dough.Grams);

    public bool RunsOver => CubicCentimetresPerGram < Least;

    public bool IsLost => CubicCentimetresPerGram > Most;
}

using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Fermentation;

/// <summary>The yeast of a sourdough in a dough that no bread yeast raises. Its gas is reckoned as that of so much fresh bread yeast.</summary>
/// <param name="MaximumCelsius">Where its growth stops, per lane.</param>
/// <param name="FreshAtMost">Fresh bread yeast that it is worth once all of the dough is as dense as a ripe sour, g per 100 g of flour, per lane.</param>
internal sealed record Culture(double[] MaximumCelsius, double[] FreshAtMost)
{
    /// <summary>
    /// Fresh bread yeast that makes as much gas as 1 g of ripe sourdough, g: a choice. 10 to 100 million yeasts in a gram of sour against ten
    /// thousand million in a gram of fresh yeast make 0.001 to 0.01. Source: sour-yeast-count.
    /// </summary>
    public const double FreshPerGramOfRipe = 0.004;

    /// <summary>
    /// The culture of a dough. How strong it is has the spread of a bread yeast's rate, and is drawn with it: ln 0.7 in all. Where its growth stops
    /// differs by 1 K, and is drawn with the highest temperature of bread yeast: the curve says 36 °C, its author 35.
    /// </summary>
    public static Culture In(Mass dough, Mass flour, RiseParameters parameters)
    {
        var grams = 100 * (dough / flour) * FreshPerGramOfRipe;
        return new([.. StopsAt(SourdoughGrowth.Yeast, parameters)], [.. parameters.Scale.Select(strength => grams * strength)]);
    }

    /// <summary>Where growth by a curve stops, °C in every lane.</summary>
    public static IEnumerable<double> StopsAt(GrowthCurve curve, RiseParameters parameters)
    {
        var standard = new RisePriors().Maximum;
        return parameters.Maximum.Select(drawn => curve.MaximumCelsius + ((drawn - standard.Central) / standard.Spread));
    }

    /// <summary>Growth of the yeast, 1/h.</summary>
    public double PerHour(int lane, double celsius) =>
        SourdoughGrowth.PerHour(new Lane1(celsius), new Lane1(MaximumCelsius[lane]), SourdoughGrowth.Yeast).Value;
}

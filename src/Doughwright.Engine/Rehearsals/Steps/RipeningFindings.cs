using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>What a ripening at home says about a sourdough, and why a ripening takes as long as it does here.</summary>
internal static class RipeningFindings
{
    /// <summary>Cultures and flours differ: beyond this factor it is a slip of the pen, or another thing than a levain. Source: sour-pace.</summary>
    private const double Factor = 2.5;

    public static IReadOnlyList<Finding> OfPace(Step step, double pace) => pace is <= Factor and >= 1 / Factor ? [] :
    [
        StepFindings.About(
            step,
            pace > 1 ? "ripens-faster-than-published" : "ripens-slower-than-published",
            Grade.Warning,
            false,
            ("factor", Math.Round(pace > 1 ? pace : 1 / pace, 1))),
    ];

    public static Reason Why(RisePhase phase, Anchor? anchor, double minutes)
    {
        var parts = new List<Reason>
        {
            Reason.Leaf("dough-at-start", phase.Start.Central, "°C"),
            Reason.Leaf("air", phase.Input.Air.Knots[0].Air.Celsius, "°C"),
        };
        if (phase.Dough.Culture is not null)
        {
            parts.Add(Reason.Leaf("bacteria-against-yeast", BacteriaAgainstYeast(phase.Start.Central), "1", source: "gaenzle-1998"));
        }

        var source = phase.Dough.Culture is null ? "rosso-1995" : "gaenzle-1998";
        if (anchor?.HomeMinutes is not { } home || !double.IsFinite(minutes))
        {
            return Reason.From("ripe-after", double.IsFinite(minutes) ? minutes : null, "min", parts, source: source);
        }

        return Reason.Sum(
            "ripe-after",
            minutes,
            "min",
            [Reason.Leaf("at-home", home.Central, "min"), Reason.From("change-of-kitchen", minutes - home.Central, "min", parts, source: source)]);
    }

    /// <summary>How fast the bacteria of a sourdough multiply against its yeast, where both do: more of them make it sourer.</summary>
    private static double? BacteriaAgainstYeast(double celsius)
    {
        var at = Temperature.FromCelsius(celsius);
        var yeast = SourdoughGrowth.At(at, SourdoughGrowth.Yeast);
        return yeast > 0 ? SourdoughGrowth.At(at, SourdoughGrowth.Bacteria) / yeast : null;
    }
}

using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Fermentation;

/// <summary>
/// How much sugar and salt slow yeast down: f = (aw - awmin) / (1 - awmin), aw the water activity of the dough's liquid, awmin where the
/// yeast stops; 1 in pure water, 0 from awmin down. One parameter for one strain; salt 0 to 3 %, sugar 0 to 30 % of the flour.
/// Error: a factor of 1.5 between strains in sweet dough. Source: gamma-concept, aem-leavening-table.
/// </summary>
internal static class OsmoticFactor
{
    /// <summary>Where ordinary bread yeast stops. Source: aw-limits.</summary>
    public const double StandardMinimum = 0.90;

    /// <summary>Where yeast for sweet doughs stops. Source: aw-limits.</summary>
    public const double OsmotolerantMinimum = 0.85;

    /// <summary>Where the one lean-dough strain stops that reacts most of all to sugar. Source: aem-leavening-table.</summary>
    public const double SensitiveMinimum = 0.955;

    public static double Of(double waterActivity, double minimum)
    {
        Require.Within(waterActivity, 0, 1, "Water activity");
        Require.Within(minimum, 0, 0.999, "Lowest water activity");
        return Math.Max(0, (waterActivity - minimum) / (1 - minimum));
    }
}

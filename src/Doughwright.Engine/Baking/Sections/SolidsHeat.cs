using Doughwright.Engine.Heat;

namespace Doughwright.Engine.Baking.Sections;

/// <summary>Heat content of the dry matter of dough, c = A + B t + C t² in J/(kg K) with t in °C.</summary>
/// <remarks>Source: choi-okos-1986. Carried on above 150 °C, beyond the range of the table, in the crust only.</remarks>
internal readonly record struct SolidsHeat(double A, double B, double C)
{
    /// <summary>Of a mixture of constituents. The shares are of the dry matter and add up to 1; water is none of them.</summary>
    public static SolidsHeat Of(params ReadOnlySpan<(FoodConstituent Constituent, double Share)> parts)
    {
        var (a, b, c) = (0.0, 0.0, 0.0);
        foreach (var (constituent, share) in parts)
        {
            var heat = ChoiOkos.SpecificHeatCoefficients(constituent);
            (a, b, c) = (a + (share * heat.A), b + (share * heat.B), c + (share * heat.C));
        }

        return new(a, b, c);
    }

    /// <summary>J/(kg K).</summary>
    public double SpecificHeatAt(double celsius) => A + (((C * celsius) + B) * celsius);

    /// <summary>Against 0 °C, in J/kg.</summary>
    public double ContentAt(double celsius) => (A + (((C * celsius / 3) + (B / 2)) * celsius)) * celsius;
}

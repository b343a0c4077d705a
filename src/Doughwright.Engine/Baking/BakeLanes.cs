namespace Doughwright.Engine.Baking;

/// <summary>What each lane brings to the oven; all arrays of the same length, a multiple of the widest pack.</summary>
/// <param name="Start">Dough on entering, °C.</param>
/// <param name="Oven">Oven air, °C.</param>
/// <param name="Boil">Boiling point, °C.</param>
/// <param name="Biot">hR/k.</param>
internal sealed record BakeLanes(double[] Start, double[] Oven, double[] Boil, double[] Biot)
{
    public int Count => Start.Length;
}

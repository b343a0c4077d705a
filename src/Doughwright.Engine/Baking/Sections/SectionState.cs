namespace Doughwright.Engine.Baking.Sections;

/// <summary>Temperature and water of every cell, and the heat that goes with them.</summary>
internal sealed class SectionState(int cells)
{
    /// <summary>°C.</summary>
    public double[] Celsius { get; } = new double[cells];

    /// <summary>kg per kg of dry matter.</summary>
    public double[] Water { get; } = new double[cells];

    /// <summary>J/m³ against 0 °C, as the flows have made it: what an iteration left over stays in here and is made good in the next step.</summary>
    public double[] Heat { get; } = new double[cells];

    /// <summary>kg per kg of dry matter, likewise as the flows have made it.</summary>
    public double[] Held { get; } = new double[cells];

    public void CopyTo(SectionState other)
    {
        Celsius.CopyTo(other.Celsius, 0);
        Water.CopyTo(other.Water, 0);
        Heat.CopyTo(other.Heat, 0);
        Held.CopyTo(other.Held, 0);
    }
}

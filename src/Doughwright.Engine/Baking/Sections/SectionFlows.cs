namespace Doughwright.Engine.Baking.Sections;

/// <summary>Heat that a piece takes from the oven and gives off with its vapour, in W, about a guess and with its slopes.</summary>
internal sealed class SectionFlows(int cells)
{
    private readonly double[] perKelvin = new double[cells];
    private readonly double[] perWater = new double[cells];
    private readonly double[] inPerKelvin = new double[cells];
    private double taken;
    private double given;

    public void Clear()
    {
        Array.Clear(perKelvin);
        Array.Clear(perWater);
        Array.Clear(inPerKelvin);
        (taken, given) = (0, 0);
    }

    public void TakeIn(int cell, double heat, double slope)
    {
        taken += heat;
        inPerKelvin[cell] += slope;
    }

    public void LetOut(int cell, double heat, double byKelvin, double byWater)
    {
        given += heat;
        perKelvin[cell] += byKelvin;
        perWater[cell] += byWater;
    }

    /// <summary>Both flows after the corrections that a solution holds, heat in even places and water in odd ones.</summary>
    public (double Taken, double Given) After(ReadOnlySpan<double> corrections)
    {
        var (into, out_) = (taken, given);
        for (var cell = 0; cell < cells; cell++)
        {
            var (kelvins, water) = (corrections[2 * cell], corrections[(2 * cell) + 1]);
            into += inPerKelvin[cell] * kelvins;
            out_ += (perKelvin[cell] * kelvins) + (perWater[cell] * water);
        }

        return (into, out_);
    }
}

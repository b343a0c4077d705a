namespace Doughwright.Engine.Fermentation;

/// <summary>The parameters of <see cref="RisePriors"/>, one value per lane.</summary>
internal sealed class RiseParameters
{
    private RiseParameters(RisePriors priors, int lanes, Func<int, double[]> standardNormals)
    {
        Lanes = lanes;
        var dimension = 0;
        double[] Next(Prior prior) => Array.ConvertAll(standardNormals(dimension++), prior.At);

        Minimum = Next(priors.Minimum);
        Optimum = Next(priors.Optimum);
        Maximum = Next(priors.Maximum);
        LowestActivity = Next(priors.LowestActivity);
        CrowdedExponent = Next(priors.CrowdedExponent);
        Void = Next(priors.Void);
        Ceiling = Next(priors.Ceiling);
        Substrate = Next(priors.Substrate);
        Maltose = Next(priors.Maltose);
        HalfSubstrate = Next(priors.HalfSubstrate);
        GrowthRate = Next(priors.GrowthRate);
        GrowthRoom = Next(priors.GrowthRoom);
        GrowthLag = Next(priors.GrowthLag);
        Scale = Next(priors.Scale);
        ShapingKeeps = Next(priors.ShapingKeeps);
    }

    public int Lanes { get; }

    public double[] Minimum { get; }

    public double[] Optimum { get; }

    public double[] Maximum { get; }

    public double[] LowestActivity { get; }

    public double[] CrowdedExponent { get; }

    public double[] Void { get; }

    public double[] Ceiling { get; }

    public double[] Substrate { get; }

    public double[] Maltose { get; }

    public double[] HalfSubstrate { get; }

    /// <summary>1/h at 27 °C. Zero: yeast that does not multiply.</summary>
    public double[] GrowthRate { get; }

    public double[] GrowthRoom { get; }

    public double[] GrowthLag { get; }

    public double[] Scale { get; }

    public double[] ShapingKeeps { get; }

    /// <summary>Every lane the central value.</summary>
    public static RiseParameters Central(int lanes, RisePriors? priors = null) => new(priors ?? new(), lanes, _ => new double[lanes]);

    /// <summary>Lanes drawn at given points; where a draw is 0, the central value.</summary>
    /// <param name="standardNormals">The draws, per lane, of a dimension: the place of the prior in <see cref="RisePriors.All"/>.</param>
    public static RiseParameters Draw(RisePriors priors, int lanes, Func<int, double[]> standardNormals) =>
        new(priors, lanes, standardNormals);
}

namespace Doughwright.Engine.Fermentation;

/// <summary>The uncertain parameters of <see cref="Rise"/>, one quasi-random dimension each, in this order.</summary>
internal sealed record RisePriors
{
    private const double Third = 0.30;
    private const double TwoFifths = 0.40;

    public Prior Minimum { get; init; } = new("lowest temperature", "°C", 0, 1.5, PriorLaw.Normal, "gause-1932");

    public Prior Optimum { get; init; } = new("best temperature", "°C", 37, 1.5, PriorLaw.Normal, "fermented-foods-text");

    public Prior Maximum { get; init; } = new("highest temperature", "°C", 50, 2, PriorLaw.Normal, "yeast-maker-temperatures");

    public Prior LowestActivity { get; init; } =
        new("lowest water activity", "1", OsmoticFactor.StandardMinimum, 0.02, PriorLaw.Normal, "aw-limits");

    public Prior CrowdedExponent { get; init; } =
        new("exponent of the dose above 3 %", "1", Dose.CrowdedExponent, 0.1, PriorLaw.Normal, "aem-leavening-table");

    public Prior Void { get; init; } = new("share of air after mixing", "1", 0.08, 0.02, PriorLaw.Normal, "dough-density");

    /// <summary>Volume, against the dough's at first, at which it holds no more gas.</summary>
    public Prior Ceiling { get; init; } = new("highest growth", "1", RiseCeiling.StrongWhite.Likely, 0.20, PriorLaw.LogNormal, "rise-ceiling");

    public Prior Substrate { get; init; } =
        new("sugar in the flour", "g per 100 g flour", 1.5, TwoFifths, PriorLaw.LogNormal, "rise-substrate");

    public Prior Maltose { get; init; } =
        new("maltose from starch at 25 °C", "g/h per 100 g flour", 0.5, TwoFifths, PriorLaw.LogNormal, "rise-substrate");

    public Prior HalfSubstrate { get; init; } =
        new("sugar at half speed", "g per 100 g flour", 0.3, TwoFifths, PriorLaw.LogNormal, "rise-substrate");

    public Prior GrowthRate { get; init; } = new("yeast growth at 27 °C", "1/h", 0.267, Third, PriorLaw.LogNormal, "yeast-growth-pyler");

    public Prior GrowthRoom { get; init; } =
        new("yeast that grows at most", "% of flour", 0.583, Third, PriorLaw.LogNormal, "yeast-growth-pyler");

    public Prior GrowthLag { get; init; } =
        new("hours at 27 °C before yeast grows", "h", 2, Third, PriorLaw.LogNormal, "yeast-growth-pyler");

    /// <summary>The author's yeast and hands against the book. Used only where nothing was measured: an anchor fixes it.</summary>
    public Prior Scale { get; init; } = new("rate against the book", "1", 1, 0.35, PriorLaw.LogNormal, "aem-leavening-table");

    public Prior ShapingKeeps { get; init; } = new("gas that shaping leaves", "1", 0.2, 0.05, PriorLaw.Normal, "gas-kept");

    public IReadOnlyList<Prior> All =>
    [
        Minimum, Optimum, Maximum, LowestActivity, CrowdedExponent, Void, Ceiling, Substrate, Maltose, HalfSubstrate,
        GrowthRate, GrowthRoom, GrowthLag, Scale, ShapingKeeps,
    ];

    /// <summary>The priors of another flour or yeast.</summary>
    public static RisePriors For(double ceiling, bool osmotolerant = false)
    {
        var standard = new RisePriors();
        return standard with
        {
            Ceiling = standard.Ceiling with { Central = ceiling },
            LowestActivity = standard.LowestActivity with
            {
                Central = osmotolerant ? OsmoticFactor.OsmotolerantMinimum : OsmoticFactor.StandardMinimum,
            },
        };
    }
}

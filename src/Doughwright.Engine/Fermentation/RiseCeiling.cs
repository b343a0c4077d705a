namespace Doughwright.Engine.Fermentation;

/// <summary>How far doughs of a flour rise before they hold no more, against the volume after mixing. Source: rise-ceiling (from memory).</summary>
/// <param name="Likely">Where nothing else is known.</param>
/// <param name="UsualMost">Upper end of what the trade gives.</param>
internal readonly record struct RiseCeiling(double Likely, double UsualMost)
{
    public static readonly RiseCeiling StrongWhite = new(4, 5);
    public static readonly RiseCeiling Plain = new(3, 4);
    public static readonly RiseCeiling Wholemeal = new(2.7, 3);
    public static readonly RiseCeiling Rye = new(1.8, 2);

    /// <summary>A dough that was seen to rise so far does not sink at that very point: it holds a spread of the prior more.</summary>
    private const double HoldsBeyondSeen = 1.2;

    /// <summary>Farther than this beyond the usual most nobody is believed.</summary>
    private const double BelievedBeyondUsual = 1.2;

    /// <summary>The likely ceiling of a dough whose author saw it rise so far; the flour's own where that is enough, or where it cannot be.</summary>
    public double WithSeen(double growth) => growth <= UsualMost * BelievedBeyondUsual ? Math.Max(Likely, HoldsBeyondSeen * growth) : Likely;
}

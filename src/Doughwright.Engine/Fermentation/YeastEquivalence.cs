using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Fermentation;

public enum YeastKind
{
    Fresh,
    ActiveDry,
    Instant,
}

/// <summary>
/// What one kind of yeast does, another does: 100 g fresh = 40 g active dry = 33 g instant. Each ±10 %; other texts have 50 and 35, equal
/// solids 32.6 and 31.6. Source: yeast-equivalence.
/// </summary>
public static class YeastEquivalence
{
    private const double ActiveDryPerFresh = 0.40;
    private const double InstantPerFresh = 0.33;

    public static Mass FreshOf(Mass yeast, YeastKind kind) => yeast / PerFresh(kind);

    public static Mass Of(Mass fresh, YeastKind kind) => fresh * PerFresh(kind);

    private static double PerFresh(YeastKind kind) => kind switch
    {
        YeastKind.Fresh => 1,
        YeastKind.ActiveDry => ActiveDryPerFresh,
        YeastKind.Instant => InstantPerFresh,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such yeast."),
    };
}

using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas;

/// <summary>One dose of yeast in the three forms it is sold in.</summary>
public sealed record YeastEquivalents(Mass Fresh, Mass ActiveDry, Mass Instant)
{
    private const double ActiveDryPerFresh = 0.40;
    private const double InstantPerFresh = 0.33;

    /// <summary>
    /// The same leavening in the three forms: fresh : active dry : instant = 100 : 40 : 33 by mass.
    /// Stated error: each ± 10 %; another text gives 100 : 50 : 35, and equal solids would be 100 : 32.6 : 31.6.
    /// Source: yeast-equivalence.
    /// </summary>
    public static YeastEquivalents FromFresh(Mass fresh) => new(fresh, fresh * ActiveDryPerFresh, fresh * InstantPerFresh);

    /// <summary>Fresh yeast that leavens as much. Same rule and error as <see cref="FromFresh"/>. Source: yeast-equivalence.</summary>
    public static Mass ToFresh(Mass mass, YeastKind kind) => kind switch
    {
        YeastKind.Fresh => mass,
        YeastKind.ActiveDry => mass / ActiveDryPerFresh,
        YeastKind.Instant => mass / InstantPerFresh,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "There are three kinds of yeast."),
    };
}

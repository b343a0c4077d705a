using Doughwright.Engine.Baking;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals;

/// <summary>What a step makes of the portions it is given.</summary>
internal sealed record StepOutcome
{
    /// <summary>The portion afterwards.</summary>
    public required Portion After { get; init; }

    /// <summary>Minutes in every lane, infinite where it never ends; null when they cannot be computed.</summary>
    public PerLane? Minutes { get; init; }

    public required Basis Basis { get; init; }

    public PerLane? StartCelsius { get; init; }

    public PerLane? EndCelsius { get; init; }

    /// <summary>Temperature right after mixing or pouring, where the step makes a component.</summary>
    public PerLane? MixedCelsius { get; init; }

    public double? SettlesAtCelsius { get; init; }

    public PerLane? Growth { get; init; }

    /// <summary>When a preferment is ripe at the earliest and the latest, min in the likely lane; null for what does not ripen.</summary>
    public (double Earliest, double Latest)? Ripe { get; init; }

    public Dial? Dial { get; init; }

    /// <summary>The free scale that the author's measurement fixed; carried to every other kitchen.</summary>
    public Anchor? Anchor { get; init; }

    /// <summary>Minutes of the likely lane before they were moved to those over a section; null where they were not.</summary>
    public double? MovedFrom { get; init; }

    public IReadOnlyList<FoldEvent> Folds { get; init; } = [];

    public IReadOnlyList<Finding> Findings { get; init; } = [];

    public Func<Reason>? Why { get; init; }

    /// <summary>Follows the likely lane through the step, on request; null where nothing but its ends is known, or where it rises.</summary>
    public Func<IReadOnlyList<WayPoint>>? Way { get; init; }

    /// <summary>The step as one in which a dough rises, whatever ends it; null where none does or that is not computed.</summary>
    public RiseSpell? Spell { get; init; }

    /// <summary>What the oven makes of it; null where nothing bakes or that is not computed.</summary>
    public BakeWay? Bake { get; init; }

    /// <summary>What a loaf that cools after the oven comes to, on request; null where none does or that is not computed.</summary>
    public Func<CoolTelling>? Cooling { get; init; }

    /// <summary>Follows the dough through a step in which it rises, on request; null where it does not rise or that is not computed.</summary>
    public RiseWay? Rise { get; init; }
}

/// <summary>A fold as it fell: when, in every lane.</summary>
internal sealed record FoldEvent(PerLane Minutes, Duration Hands);

/// <summary>What a measurement at home fixed.</summary>
/// <param name="Scale">The free scale of the step in every lane.</param>
/// <param name="Growth">Growth that goes with it: at the folds of a bulk, at the end of a proof. Of a bake: how far the core comes on the way to boiling, the pace, how far its crust browned.</param>
/// <param name="HomeMinutes">Minutes at home, with the reading error of each lane.</param>
internal sealed record Anchor(PerLane? Scale, IReadOnlyList<PerLane> Growth, PerLane? HomeMinutes);

using Doughwright.Engine.Formulas;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Engine.Rehearsals;

/// <summary>The computed run of a recipe in a kitchen: no flour used.</summary>
public sealed record Rehearsal
{
    public required Recipe Recipe { get; init; }

    public required Formula Formula { get; init; }

    public required Kitchen Kitchen { get; init; }

    /// <summary>True when the kitchen and everything asked for are the author's own.</summary>
    public required bool AtHome { get; init; }

    public required Pressure Pressure { get; init; }

    /// <summary>Boiling point of water in this kitchen.</summary>
    public required Temperature Boils { get; init; }

    public required IReadOnlyList<RehearsedStep> Steps { get; init; }

    public required IReadOnlyList<RehearsedComponent> Components { get; init; }

    /// <summary>Answers to "how warm must this go in": empty unless a dough temperature was asked for.</summary>
    public required IReadOnlyList<Solution> Solutions { get; init; }

    /// <summary>From the first hand to the last step; null when a step on the way never ends or cannot be computed, and when there is none.</summary>
    public required Estimate<Duration>? Total { get; init; }

    /// <summary>Minutes a person is busy, preparing included.</summary>
    public required Duration Hands { get; init; }

    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Whether a bake in it was computed and not timed, so that its section may tell it better (<see cref="Rehearser.OverSections"/>).</summary>
    public bool HasComputedBake => Steps.Any(step => step is { Kind: StepKind.Bake, Basis: Basis.Computed, Time: not null });

    /// <summary>The run behind the figures, kept so that more can be asked of it later.</summary>
    internal RunResult Kept { get; init; } = null!;

    /// <summary>The likely run as it goes along, for pictures. Worked out anew on every call; half a millisecond or so.</summary>
    public Course Course() => CourseMaker.Of(Kept, IceInBowl.Of(this));

    /// <summary>Where the warmth of a mix comes from; null when the step does not mix, or its temperature or a heat is not known.</summary>
    public HeatBalance? HeatOf(string step) => HeatBalances.Of(Kept, step) is not { } balance ? null : IceInBowl.Of(this)?.Apart(balance) ?? balance;

    /// <summary>The step with this id, or null.</summary>
    public RehearsedStep? FindStep(string id) => Steps.FirstOrDefault(step => step.Id == id);
}

/// <summary>A component right after it was mixed or poured; null when that cannot be computed.</summary>
public sealed record RehearsedComponent(string Id, ComponentKind Kind, Estimate<Temperature>? Mixed);

using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>What a step is given. Nothing else may decide what it does.</summary>
/// <param name="Before">The portion it works on, as the step before left it; null for the first step of a component.</param>
/// <param name="Parts">Portions of the other components that go in, by component id.</param>
/// <param name="Air">Air from the start of the step on.</param>
/// <param name="Anchor">What the author's measurement fixed at home; null at home itself and where nothing was measured.</param>
internal sealed record StepInput(
    Step Step,
    Portion? Before,
    IReadOnlyDictionary<string, Portion> Parts,
    AirProfile Air,
    Anchor? Anchor,
    Stage Stage)
{
    public int Lanes => Stage.Lanes;

    /// <summary>Fillings that are laid in while this step shapes, by component id.</summary>
    public IReadOnlyList<string> Fillings { get; init; } = [];

    /// <summary>Whether the step is done as the author did it, so that what was measured is to be met.</summary>
    public bool IsHome { get; init; } = Stage.Meets(Step);

    /// <summary>A place made warm around it, which is another in every lane; null where the air is all there is.</summary>
    public Surroundings? Around { get; init; }

    /// <summary>The author's measurement, where it is to be met: at home only.</summary>
    public Measured? ToMeet => IsHome ? Step.Measured : null;
}

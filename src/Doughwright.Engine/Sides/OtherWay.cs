using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Sides;

/// <summary>Another way to do a step: what is said of it otherwise than of the step itself.</summary>
/// <param name="Id">Of the variant.</param>
public sealed record OtherWay(string Id, IReadOnlyList<RecipeDifference> Said)
{
    internal static IReadOnlyList<OtherWay> Of(Step step) => [.. step.Variants.Select(variant => new OtherWay(variant.Id, Between(step, variant.Step)))];

    /// <summary>The same way of another step: what is said of it laid over that one.</summary>
    internal static StepVariant Over(Step step, StepVariant variant, Step other) => variant with
    {
        Step = Between(step, variant.Step).Aggregate(
            other with { Variants = [] },
            (made, said) => StepTraits.All.First(trait => trait.Aspect == said.Aspect).Take(variant.Step, made)),
    };

    private static IReadOnlyList<RecipeDifference> Between(Step step, Step way) =>
        [.. RecipeDifferences.Of(StepTraits.All.Where(trait => trait.Aspect != Aspect.Variants), step, way)];
}

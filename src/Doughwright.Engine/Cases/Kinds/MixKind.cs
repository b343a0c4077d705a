using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>How warm a dough is right after mixing.</summary>
internal sealed class MixKind : CaseKind
{
    private static readonly CaseQuantity Warmth = new("dough temperature", null, Dimension.Temperature);

    public override string Name => "mix";

    public override IReadOnlyList<string> Keys => [Mixture.Lines, Mixture.Air, Mixture.Tap, Mixture.Fridge, Mixture.Altitude, Mixture.Bowl, Mixture.Way];

    public override IReadOnlyList<CaseQuantity> Quantities => [Warmth];

    public override ICaseModel? Read(CaseConditions conditions) => Mixture.Read(conditions, ComponentKind.Dough, StepKind.Mix);
}

using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>How warm flour is over which boiling water was poured, before it cools.</summary>
internal sealed class ScaldKind : CaseKind
{
    private static readonly CaseQuantity Warmth = new("scald temperature", null, Dimension.Temperature);

    public override string Name => "scald";

    public override IReadOnlyList<string> Keys => [Mixture.Lines, Mixture.Air, Mixture.Tap, Mixture.Fridge, Mixture.Altitude, Mixture.Bowl];

    public override IReadOnlyList<CaseQuantity> Quantities => [Warmth];

    public override ICaseModel? Read(CaseConditions conditions) => Mixture.Read(conditions, ComponentKind.Scald, StepKind.Scald);
}

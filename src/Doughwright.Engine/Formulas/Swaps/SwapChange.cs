namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>The recipe before and after, side by side.</summary>
internal sealed class SwapChange(Formula before, Formula after, IReadOnlyList<PlannedSwap> plan, IReadOnlyList<PartEdit> edits)
{
    public Formula Before => before;

    public Formula After => after;

    /// <summary>What was swapped, without what is the same by another name.</summary>
    public IReadOnlyList<PlannedSwap> Swaps { get; } = [.. plan.Where(swap => swap.Manner != Manner.Same)];

    public IReadOnlyList<PartEdit> Edits => edits;

    public IReadOnlyList<SwappedLine> Lines { get; } = SwappedLines.Of(before, after, edits);

    public IReadOnlyList<SwapResidual> Residuals { get; } = SwapResiduals.Of(before, after, plan);

    public IReadOnlyList<FlourThirst> Thirst { get; } =
        [.. plan.Where(swap => swap.Manner == Manner.Flour).Select(ThirstTable.Of).OfType<FlourThirst>()];

    public AllergenChange Allergens { get; } = AllergenChanges.Of(before, after);

    public IReadOnlyList<BuyChange> Buy { get; } = BuyChanges.Of(before, after);
}

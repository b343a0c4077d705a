using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas;

/// <summary>Collects where a constituent comes from. An unknown share makes the total unknown and leaves "at least".</summary>
internal sealed class BudgetBuilder
{
    private readonly List<BudgetShare> shares = [];
    private double atLeast;

    /// <summary>Grams in all; null when a share is unknown.</summary>
    public double? Total { get; private set; } = 0;

    public void Add(Part part, PartLine line, double? grams)
    {
        Total += grams;
        if (grams is { } known)
        {
            atLeast += known;
        }

        if (grams != 0)
        {
            shares.Add(new(part.Component.Id, line.Source.Id, line.Source.Name, grams is { } share ? Mass.FromGrams(share) : null));
        }
    }

    public Budget Build() => new(Mass.FromGrams(atLeast), Total is { } total ? Mass.FromGrams(total) : null, shares);
}

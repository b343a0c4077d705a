using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas;

/// <summary>Collects where a constituent comes from. An unknown share makes the total unknown and leaves "at least".</summary>
internal sealed class BudgetBuilder
{
    private readonly List<BudgetShare> shares = [];
    private double atLeast;
    private double? notKnown = 0;

    /// <summary>Grams in all; null when a share is unknown.</summary>
    public double? Total { get; private set; } = 0;

    /// <param name="grams">What the line brings; null when unknown.</param>
    /// <param name="mass">What it weighs in the dough: it cannot bring more. Null when nobody can weigh it.</param>
    public void Add(Part part, PartLine line, double? grams, double? mass)
    {
        Total += grams;
        atLeast += grams ?? 0;
        notKnown += grams is null ? mass : 0;

        if (grams != 0)
        {
            shares.Add(new(part.Component.Id, line.Source.Id, line.Source.Name, grams is { } share ? Mass.FromGrams(share) : null));
        }
    }

    public Budget Build() => new(Mass.FromGrams(atLeast), Total is { } total ? Mass.FromGrams(total) : null, shares) { AtMost = atLeast + notKnown is { } most ? Mass.FromGrams(most) : null };
}

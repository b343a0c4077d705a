using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas;

/// <summary>A part of the recipe while the formula is being worked out.</summary>
internal sealed class Part(Component component)
{
    public Component Component { get; } = component;

    public List<PartLine> Lines { get; } = [];

    public Mass Mass { get; private set; }

    /// <summary>All flour in it, nested parts included.</summary>
    public Mass Flour { get; private set; }

    /// <summary>All water but the flour's own, nested parts included; null when unknown.</summary>
    public Mass? Water { get; private set; }

    public Composition Composition { get; private set; } = Composition.Unknown;

    public bool IsUsed { get; set; }

    /// <summary>
    /// How much of it ends up in the dough, as a fraction of what is made;
    /// more than 1 when it is used more often than made.
    /// </summary>
    public double ShareInDough { get; set; }

    /// <summary>The fraction of it that ends up in the dough by way of a scald, itself included.</summary>
    public double ShareScalded { get; set; }

    /// <summary>The fraction of it that ends up in the dough by way of a preferment, itself included.</summary>
    public double SharePrefermented { get; set; }

    /// <summary>The line the author names as base; else own flour lines, or the largest line where there is no flour.</summary>
    public Mass Base
    {
        get
        {
            if (Lines.FirstOrDefault(line => line.Source.Id == Component.Base) is { } named)
            {
                return named.Mass;
            }

            var flour = Sum(Lines.Where(line => line.Role == Role.Flour).Select(line => line.Mass));
            return flour > Mass.Zero || Lines.Count == 0 ? flour : Lines.Max(line => line.Mass);
        }
    }

    /// <summary>Whether a line belongs to what the part is for: a dough's toppings and fillings lie on or in it, and are not it.</summary>
    public bool Holds(PartLine line) =>
        !Component.BelongsToDough || (line.Uses is { } used ? used.Component.BelongsToDough : line.Role != Role.Topping);

    /// <summary>Sums up the lines. Called once, when every part that is used has been summed up.</summary>
    public void SumUp()
    {
        var held = Lines.Where(Holds).ToArray();
        Mass = Sum(Lines.Select(line => line.Mass));
        Flour = Sum(held.Select(line => line.Flour));
        Water = held.Aggregate((Mass?)Mass.Zero, (sum, line) => sum + line.Water);
        if (Mass > Mass.Zero)
        {
            Composition = Composition.Mix([.. Lines.Select(line => (line.Mass.Grams, line.Composition))]);
        }
    }

    private static Mass Sum(IEnumerable<Mass> masses) => masses.Aggregate(Mass.Zero, (sum, mass) => sum + mass);
}

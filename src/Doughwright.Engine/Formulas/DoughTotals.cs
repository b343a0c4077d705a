using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas;

/// <summary>Sums over every ingredient of the dough, each as far as its part goes into it.</summary>
internal sealed class DoughTotals
{
    private readonly Dictionary<Role, double> gramsByRole = [];
    private readonly HashSet<Role> unweighed = [];
    private double? hydrationGrams = 0;
    private double? freshYeastGrams = 0;
    private double scaldedGrams;
    private double prefermentedGrams;
    private double doughGrams;

    public DoughTotals(IReadOnlyList<Part> parts)
    {
        foreach (var part in parts)
        {
            foreach (var line in part.Lines.Where(line => line.Uses is null && part.Holds(line)))
            {
                if (part.ShareInDough > 0)
                {
                    Add(part, line);
                }
            }
        }
    }

    public Mass Flour => Mass.FromGrams(Of(Role.Flour));

    public Mass Dough => Mass.FromGrams(doughGrams);

    public BudgetBuilder Water { get; } = new();

    public BudgetBuilder Sugar { get; } = new();

    public BudgetBuilder Fat { get; } = new();

    public YeastEquivalents? Yeast => freshYeastGrams is { } grams ? YeastEquivalents.FromFresh(Mass.FromGrams(grams)) : null;

    public FormulaPercents Percents => new(
        OnFlour(hydrationGrams),
        OnFlour(Water.Total),
        OnFlour(Known(Role.Salt)),
        OnFlour(Known(Role.Sugar)),
        OnFlour(Sugar.Total),
        OnFlour(Known(Role.Fat)),
        OnFlour(Fat.Total),
        OnFlour(freshYeastGrams),
        OnFlour(scaldedGrams),
        OnFlour(prefermentedGrams));

    private void Add(Part part, PartLine line)
    {
        var share = part.ShareInDough;
        var grams = line.Mass.Grams * share;
        doughGrams += grams;
        double? most = line.IsWeighed ? grams : null;
        Water.Add(part, line, line.Water?.Grams * share, most);
        Sugar.Add(part, line, line.Amount(line.Composition.Sugars)?.Grams * share, most);
        Fat.Add(part, line, line.Amount(line.Composition.Fat)?.Grams * share, most);
        if (line.Role is not { } role)
        {
            return;
        }

        gramsByRole[role] = Of(role) + grams;
        if (!line.IsWeighed)
        {
            unweighed.Add(role);
        }

        switch (role)
        {
            case Role.Flour:
                scaldedGrams += line.Mass.Grams * part.ShareScalded;
                prefermentedGrams += line.Mass.Grams * part.SharePrefermented;
                break;
            case Role.Water:
                hydrationGrams += most;
                break;
            case Role.Liquid:
                hydrationGrams += line.Water?.Grams * share;
                break;
            case Role.Yeast:
                freshYeastGrams += line is { Source.Mass: not null, Ingredient.Yeast: { } kind } ? YeastEquivalents.ToFresh(line.Mass * share, kind).Grams : null;
                break;
        }
    }

    private double Of(Role role) => gramsByRole.GetValueOrDefault(role);

    private double? Known(Role role) => unweighed.Contains(role) ? null : Of(role);

    private Percent? OnFlour(double? grams) => grams is { } known && Flour > Mass.Zero && !unweighed.Contains(Role.Flour) ? Percent.Of(Mass.FromGrams(known), Flour) : null;
}

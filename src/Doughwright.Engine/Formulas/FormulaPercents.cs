using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas;

/// <summary>The dough on its flour. Null is unknown: there is no flour, or an ingredient is not known well enough.</summary>
/// <param name="Hydration">As bakers write it: lines of role water, and of role liquid at their water. Never egg, fat or starchy.</param>
/// <param name="TrueWater">All water of the dough except the flour's own moisture.</param>
/// <param name="Salt">Lines of role salt.</param>
/// <param name="Sugar">Lines of role sugar.</param>
/// <param name="TrueSugar">All sugars the dough holds.</param>
/// <param name="Fat">Lines of role fat.</param>
/// <param name="TrueFat">All fat the dough holds.</param>
/// <param name="FreshYeast">All yeast as fresh yeast.</param>
/// <param name="ScaldedFlour">Flour that goes through a scald.</param>
/// <param name="PrefermentedFlour">Flour that goes through a preferment.</param>
public sealed record FormulaPercents(
    Percent? Hydration,
    Percent? TrueWater,
    Percent? Salt,
    Percent? Sugar,
    Percent? TrueSugar,
    Percent? Fat,
    Percent? TrueFat,
    Percent? FreshYeast,
    Percent? ScaldedFlour,
    Percent? PrefermentedFlour);

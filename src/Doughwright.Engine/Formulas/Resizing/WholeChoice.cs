using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>A line that comes in whole pieces and does not come out whole: it is weighed, or one of the neighbours is taken.</summary>
/// <param name="Component">Id of its part.</param>
/// <param name="Line">Id of the line.</param>
/// <param name="Name">As the author wrote it.</param>
/// <param name="Piece">Mass of one piece.</param>
/// <param name="Needed">Pieces it comes to, not rounded.</param>
/// <param name="Options">The neighbours, the smaller first; no piece at all is none.</param>
public sealed record WholeChoice(string Component, string Line, string Name, Mass Piece, double Needed, IReadOnlyList<WholeOption> Options);

/// <summary>One neighbour: so many whole pieces, and what that does when nothing else is changed.</summary>
/// <param name="Count">Whole pieces, at least 1.</param>
/// <param name="Mass">Of all of them.</param>
/// <param name="Shift">What it shifts against the weighed line.</param>
/// <param name="WholeFactor">The factor at which the whole recipe would take just so many.</param>
/// <param name="WholeDough">The dough of that.</param>
public sealed record WholeOption(int Count, Mass Mass, FormulaShift Shift, double WholeFactor, Mass WholeDough);

/// <summary>What one change does to a formula, in percentage points on flour; null where that is not known.</summary>
/// <param name="Dough">Dough more or less.</param>
/// <param name="TrueWater">All water of the dough.</param>
/// <param name="TrueSugar">All sugars of the dough.</param>
/// <param name="TrueFat">All fat of the dough.</param>
/// <param name="Hydration">As bakers write it: no egg counts there.</param>
public sealed record FormulaShift(Mass Dough, double? TrueWater, double? TrueSugar, double? TrueFat, double? Hydration)
{
    internal static FormulaShift Between(Formula from, Formula to) => new(
        to.Dough - from.Dough,
        Points(from.Percent.TrueWater, to.Percent.TrueWater),
        Points(from.Percent.TrueSugar, to.Percent.TrueSugar),
        Points(from.Percent.TrueFat, to.Percent.TrueFat),
        Points(from.Percent.Hydration, to.Percent.Hydration));

    private static double? Points(Percent? from, Percent? to) => to?.Value - from?.Value;
}

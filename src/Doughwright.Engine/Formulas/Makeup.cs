using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas;

/// <summary>The dough unlaid into what its lines bring: flour, water, sugar, fat and the rest.</summary>
/// <param name="Rows">One for every line of the final dough, in its order; a part made beforehand is one row.</param>
/// <param name="Total">All of the dough.</param>
public sealed record Makeup(IReadOnlyList<MakeupRow> Rows, MakeupRow Total);

/// <summary>What one line brings. Flour counts whole, with its own water and fat. Null is not known; the known ones and <see cref="Rest"/> add up to the mass when all are known.</summary>
/// <param name="Line">Id of the line; empty for the total.</param>
public sealed record MakeupRow(string Line, Mass Mass, Mass Flour, Mass? Water, Mass? Sugar, Mass? Fat, Mass? Rest);

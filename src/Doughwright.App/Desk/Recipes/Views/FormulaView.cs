using Doughwright.App.Desk.Recipes.Telling;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>The formula as a table: the total, every part made beforehand, the final dough, and how warm each line goes in.</summary>
/// <param name="Groups">Heads of the groups of columns, the total first and the final dough last.</param>
/// <param name="Unit">Head of the columns of weights; a word where every weight carries its own.</param>
/// <param name="Note">What stands under the table: all water, scalded and prefermented flour, yeast.</param>
public sealed record FormulaView(
    IReadOnlyList<string> Groups, string Unit, string DegreeUnit, IReadOnlyList<FormulaLine> Lines, FormulaLine Total, Told Note)
{
    /// <summary>So many groups the sheet of styles can show one at a time.</summary>
    public const int MostPicked = 10;

    /// <summary>Whether a narrow window shows one group at a time, to be picked. Where there are more, all of them stand side by side and the table scrolls.</summary>
    public bool IsPicked => Groups.Count <= MostPicked;
}

/// <summary>One line of the formula.</summary>
/// <param name="Cells">One for each group; null where the line is not in it.</param>
/// <param name="GoesIn">How warm it goes in, without unit; null when it does not or is not known.</param>
/// <param name="Warmth">Class of that temperature's colour.</param>
/// <param name="IsFree">Whether its warmth is solved for.</param>
public sealed record FormulaLine(string Name, IReadOnlyList<FormulaCell?> Cells, Fig? GoesIn, string? Warmth, bool IsFree);

/// <summary>Weight and percentage; the percentage is null when it is not known.</summary>
public sealed record FormulaCell(Fig Weight, Fig? Percent)
{
    /// <summary>The household measure the author typed; null where it was weighed.</summary>
    public string? Typed { get; init; }
}

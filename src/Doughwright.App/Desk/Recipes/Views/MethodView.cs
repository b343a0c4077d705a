using Doughwright.App.Desk.Notes;
using Doughwright.App.Desk.Recipes.Telling;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>The method as a table: when each step begins, whose time it takes, and how one knows that it is done.</summary>
public sealed record MethodView(IReadOnlyList<MethodRow> Rows, Told Ready, Fig Hands);

/// <summary>One step, or something done within one.</summary>
/// <param name="Hands">Minutes by hand; nothing for none.</param>
/// <param name="Wait">What it takes beside that; nothing for none.</param>
/// <param name="Range">Of the waiting; nothing when it is no wider than what is printed.</param>
/// <param name="KnownFrom">Measured, computed or stated.</param>
public sealed record MethodRow(Told Start, string Name, Told Hands, Told Wait, Told Range, Told Target, string Cue, string KnownFrom)
{
    /// <summary>Teaching notes that the step links to, with the values of what lies on the desk.</summary>
    public IReadOnlyList<NoteAtStep> Notes { get; init; } = [];
}

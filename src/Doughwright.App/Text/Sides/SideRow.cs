using Doughwright.Engine.Sides;

namespace Doughwright.App.Text.Sides;

/// <summary>One thing that differs, in finished words.</summary>
/// <param name="By">How much and which way, or that it is new, gone or other.</param>
internal sealed record SideRow(string What, SideCell First, SideCell Second, string By, RecipeDifference Difference);

/// <summary>One side of a row.</summary>
/// <param name="Under">The same as it was typed; null where that says no more.</param>
public sealed record SideCell(string Text, string? Under = null)
{
    /// <summary>On one line.</summary>
    public string Line => Under is null ? Text : $"{Text} ({Under})";
}

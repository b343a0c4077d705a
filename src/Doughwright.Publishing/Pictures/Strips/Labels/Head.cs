using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>What stands at the upright of a step.</summary>
/// <param name="X">Of its upright.</param>
/// <param name="Width">To the next upright, or to the slash before it.</param>
/// <param name="Name">Null when no word of it finds room anywhere.</param>
/// <param name="Row">0 between its upright and the next; else so many rows higher, and its upright with it.</param>
/// <param name="IsLeft">Whether it ends at its upright.</param>
internal sealed record Head(PlannedStep Step, double X, double Width, string? Name, int Row = 0, bool IsLeft = false)
{
    /// <summary>Between an upright and its name.</summary>
    public const double Beside = 4;

    public const double RowHeight = 18;

    public double Left => IsLeft ? X - Beside - Length : X + Beside;

    public double Right => IsLeft ? X - Beside : X + Beside + Length;

    public Anchor Anchor => IsLeft ? Anchor.End : Anchor.Start;

    private double Length => Name is null ? 0 : Type.Head.Width(Name);
}

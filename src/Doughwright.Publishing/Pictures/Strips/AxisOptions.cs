using Doughwright.Engine.Quantities;

namespace Doughwright.Publishing.Pictures.Strips;

/// <summary>The clock over the rows of the shelf.</summary>
internal sealed record AxisOptions
{
    /// <summary>As in <see cref="MiniOptions.Span"/>.</summary>
    public required Duration Span { get; init; }

    /// <summary>Time of day at the right edge, when the bread is ready, after midnight.</summary>
    public required Duration ReadyAt { get; init; }

    public double Width { get; init; } = MiniStrip.Width;
}

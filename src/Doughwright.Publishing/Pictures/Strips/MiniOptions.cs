using Doughwright.Engine.Quantities;

namespace Doughwright.Publishing.Pictures.Strips;

/// <summary>One row of the shelf. All rows share span, width and scale, and end together when the bread is ready.</summary>
internal sealed record MiniOptions
{
    /// <summary>Unique on the page.</summary>
    public required string Id { get; init; }

    /// <summary>Time from the left edge to the right, where the bread is ready. What lies before is cut off.</summary>
    public required Duration Span { get; init; }

    /// <summary>Height of a gram without gas, in the units of the picture; <see cref="Strips.MiniScale"/> finds one that fits every row.</summary>
    public required double PixelsPerGram { get; init; }

    public double Width { get; init; } = MiniStrip.Width;
}

using Doughwright.Engine.Quantities;

namespace Doughwright.Publishing.Pictures.Strips;

/// <summary>What a wide or tall strip is asked for beside its recipe.</summary>
internal sealed record StripOptions
{
    /// <summary>Unique on the page.</summary>
    public required string Id { get; init; }

    /// <summary>
    /// Time that is drawn, long waits counted as <see cref="Strips.Span"/> counts them, so that two strips can stand on one scale; null is just
    /// the strip's own. Wide only. Shorter than the strip's own is refused.
    /// </summary>
    public Duration? Span { get; init; }

    public IReadOnlyList<StripMark> Marks { get; init; } = [];
}

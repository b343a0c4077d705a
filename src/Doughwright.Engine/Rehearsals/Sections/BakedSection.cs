using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Sections;

/// <summary>A bake computed over a section through the piece: the likely answer, without a range of its own.</summary>
/// <param name="Step">Id of the bake.</param>
/// <param name="Minutes">From going in until it comes out.</param>
/// <param name="Lies">Whether the axis of the piece lies, as in a stick or a tin; else it stands.</param>
/// <param name="Radius">Of the risen piece as a cylinder about its axis.</param>
/// <param name="Height">Along the axis.</param>
/// <param name="Heat">Times the heat of the usual oven that the author's minutes ask for.</param>
/// <param name="Course">From when it goes in to when it is done.</param>
/// <param name="Slices">The section at a few moments, the last when it is done.</param>
public sealed record BakedSection(
    string Step,
    Duration Minutes,
    bool Lies,
    Length Radius,
    Length Height,
    double Heat,
    IReadOnlyList<BakedMoment> Course,
    IReadOnlyList<SectionSlice> Slices)
{
    /// <summary>The same, every moment of it so many times as late.</summary>
    internal BakedSection AtPace(double pace) => this with
    {
        Minutes = pace * Minutes,
        Course = [.. Course.Select(moment => moment with { After = pace * moment.After })],
        Slices = [.. Slices.Select(slice => slice with { After = pace * slice.After })],
    };
}

/// <summary>A piece at one moment of its bake.</summary>
/// <param name="Core">In the middle.</param>
/// <param name="Top">Of the surface: the middle of the upper end of the axis.</param>
/// <param name="Side">Of the surface: the middle of the mantle.</param>
/// <param name="Bottom">Of the surface: the middle of the lower end of the axis.</param>
/// <param name="Lost">Of the mass of the dough, 0 to 100 %.</param>
public sealed record BakedMoment(Duration After, Temperature Core, Temperature Top, Temperature Side, Temperature Bottom, Percent Lost)
{
    /// <summary>What the surface meets: air and walls together; null where that is not told.</summary>
    public Temperature? Oven { get; init; }
}

/// <summary>The section at one moment.</summary>
/// <param name="Edges">Of the rings, from the axis outwards, in mm: one more than there are rings.</param>
/// <param name="Levels">Of the layers, from the bottom up, in mm: one more than there are layers.</param>
/// <param name="Cells">Temperatures by layer, then ring.</param>
public sealed record SectionSlice(Duration After, IReadOnlyList<double> Edges, IReadOnlyList<double> Levels, IReadOnlyList<Temperature> Cells);

using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Courses;

/// <summary>
/// The likely run as it goes along, for pictures: where everything lies, how heavy, how warm and how big it is from the first hand to the end.
/// Times are after the first hand. A strand ends early where what follows cannot be told.
/// </summary>
/// <param name="Strands">One for every part that is made on its own, in the order of the recipe; a part without a step (a wash of plain milk) has none.</param>
/// <param name="Entries">What goes straight into a mix, without a step of its own.</param>
/// <param name="Rises">Every rise with its range.</param>
public sealed record Course(IReadOnlyList<Strand> Strands, IReadOnlyList<Entry> Entries, IReadOnlyList<RiseCurve> Rises)
{
    /// <summary>The strand of this part, or null.</summary>
    public Strand? FindStrand(string component) => Strands.FirstOrDefault(strand => strand.Component == component);
}

/// <summary>The way of one part.</summary>
/// <param name="Component">Id of the part.</param>
/// <param name="Joins">Id of the step at which it goes into, or onto, another part; null for what is baked itself, and for what is never used.</param>
/// <param name="Into">Id of the part it goes into; null like <paramref name="Joins"/>.</param>
/// <param name="Stretches">
/// In order of time, without gaps: every step that works on it, and the waits between and before it goes in. The first point of a stretch lies
/// where the last of the one before lay in time. Where the time of a step is not known the strand ends before it, so it may have no stretch.
/// </param>
public sealed record Strand(string Component, ComponentKind Kind, string? Joins, string? Into, IReadOnlyList<Stretch> Stretches);

/// <summary>
/// One step of a part's way, or a wait between two. A wait holds temperature and volume, because the rehearsal takes the part into the next
/// step as the one before left it; only what was baked cools on.
/// </summary>
/// <param name="Step">Id of the step; null for a wait.</param>
/// <param name="Points">At least two, in order of time, dense enough to be joined by straight lines. Two at the same time are a jump.</param>
public sealed record Stretch(string? Step, Duration Start, Duration End, IReadOnlyList<CoursePoint> Points)
{
    /// <summary>Whether the temperatures are told nowhere else: a baked piece that is turned out or glazed, or waits, and cools on.</summary>
    public bool IsOnlyDrawn { get; init; }
}

/// <summary>A part at one moment.</summary>
/// <param name="Mass">
/// What it weighs, with what was laid in or on. More before peeling and cooking, where the author's weighing or the larder tells how much. What
/// evaporates in a bake is not known and not taken off. Where less than all goes into the next part, or as warm
/// as was asked and no step tells how, the last point is what goes in.
/// </param>
/// <param name="Temperature">
/// Mean over the part; null when it cannot be told. In a bake it is ahead of the core that the step is told by. A pot is drawn by the straight
/// line between the two temperatures that are told.
/// </param>
/// <param name="Volume">
/// As a multiple of its volume without gas it took up by rising: 1 when just mixed, and for what does not rise. Null when it cannot be told: for a
/// preferment that ripens, and from a rise on that is not computed. While pieces are shaped one after the other it is the mean of all of them.
/// A bake holds it: how far a piece springs in the oven is not known.
/// </param>
public readonly record struct CoursePoint(Duration At, Mass Mass, Temperature? Temperature, double? Volume);

/// <summary>Ingredients that go straight into a mix.</summary>
/// <param name="Step">Id of the mix.</param>
/// <param name="Mass">All of them together.</param>
/// <param name="Lines">Ids of the lines, the heaviest first.</param>
/// <param name="Coldest">The coldest of them; null when it cannot be told.</param>
public sealed record Entry(string Step, string Component, Mass Mass, IReadOnlyList<string> Lines, Temperature? Coldest, Temperature? Warmest);

/// <summary>How a bulk or a final proof rises, with its range.</summary>
/// <param name="Step">Id of the step.</param>
/// <param name="Target">Growth at which it ends, against the volume after mixing (bulk) or at the start of the step (proof); null when it ends by the clock.</param>
/// <param name="Likely">The likely curve, past the target as far as it is worth drawing (half as long again), folds included.</param>
/// <param name="Reached">
/// For levels from the start upwards by equal steps to the top of the likely curve: when that growth is first reached. The band of the picture.
/// Every draw has its own reading of the author's dough, so a level is a share of each draw's own way to its end, and the level of the target
/// has exactly the range of the step.
/// </param>
public sealed record RiseCurve(string Step, double? Target, IReadOnlyList<RisePoint> Likely, IReadOnlyList<RiseLevel> Reached);

/// <summary>A moment of a rise.</summary>
/// <param name="After">After the start of the step.</param>
/// <param name="Growth">Against the reference of the curve.</param>
public readonly record struct RisePoint(Duration After, double Growth, Temperature Temperature);

/// <summary>When a growth is reached; the high end is open when more than one draw in ten does not get there in three times the length of the curve.</summary>
public readonly record struct RiseLevel(double Growth, Estimate<Duration> After);

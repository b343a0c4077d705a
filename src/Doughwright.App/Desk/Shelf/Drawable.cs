using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.App.Desk.Shelf;

/// <summary>What the strip of a row is drawn from.</summary>
internal sealed record Drawable(Rehearsal Rehearsal, Course Course)
{
    public static Drawable Of(Rehearsal rehearsal) => new(rehearsal, rehearsal.Course());
}

using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.App.Desk.Recipes;

/// <summary>The way from a rehearsal to its pictures.</summary>
internal static class Pictures
{
    public static HeatBalance? HeatOf(Rehearsal rehearsal, string step) => null;
}

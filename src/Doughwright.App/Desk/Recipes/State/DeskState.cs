using Doughwright.App.Commands;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Engine.Rehearsals.Sections;

namespace Doughwright.App.Desk.Recipes.State;

/// <summary>One recipe on the desk, worked out. Immutable.</summary>
/// <param name="Setting">What is set now; what was worked out may still be that of the moment before.</param>
/// <param name="Here">The rehearsal as asked.</param>
/// <param name="Home">The same at home, as written.</param>
/// <param name="Findings">As the command line lists them, in its order, without those that are accepted.</param>
/// <param name="HomeCourse">The course at home, made when a picture first needs it.</param>
/// <param name="Offer">What would be warmed to keep the dough, or null when nothing can be.</param>
internal sealed record DeskState(
    RecipeFile File,
    Setting Setting,
    MeasureSystem Measures,
    Rehearsal Here,
    Rehearsal Home,
    IReadOnlyList<Finding> Findings,
    Solution? Offer,
    Lazy<Course> HomeCourse)
{
    /// <summary>The bakes over their sections, by which everything here goes; null as long as they are not computed, and where nothing bakes.</summary>
    public BakesOverSections? Bakes { get; init; }

    /// <summary>Whether the bakes are told along one radius until their sections are computed.</summary>
    public bool AwaitsBakes => Bakes is null && KeptBakes.HasBake(Recipe);

    /// <summary>What the author has seen and accepts, each with the reason.</summary>
    public required IReadOnlyList<(Finding Finding, string Reason)> Accepted { get; init; }

    /// <summary>Ways out that can be carried out in the recipe's text.</summary>
    public required Offers Offers { get; init; }

    /// <summary>Ids of findings that can be accepted: those that the recipe has at home too, where it is judged.</summary>
    public required IReadOnlySet<string> Acceptable { get; init; }

    public bool IsAway => !Here.AtHome;

    public Recipe Recipe => File.Recipe!;
}

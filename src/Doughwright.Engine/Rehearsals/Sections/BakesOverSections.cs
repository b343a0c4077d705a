using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Sections;

/// <summary>The bakes of a recipe in a kitchen over sections through their pieces.</summary>
/// <param name="Request">As asked, with what the bakes take in it.</param>
/// <param name="All">In the order of the method, without those that cannot be computed.</param>
public sealed record BakesOverSections(Request Request, IReadOnlyList<BakedSection> All)
{
    /// <summary>The bake of this step, or null.</summary>
    public BakedSection? Find(string step) => All.FirstOrDefault(section => section.Step == step);

    internal static BakesOverSections Of(HomeBakes home, Larder larder, Request request, CancellationToken stop)
    {
        var minutes = new Dictionary<string, SectionMinutes>();
        var all = new List<BakedSection>();
        request = request with { SectionMinutes = minutes };
        foreach (var step in home.Run.Formula.Recipe.Steps.Where(step => step.Kind == StepKind.Bake))
        {
            // A bake before may move when this one begins, and so the air it meets.
            var here = Rehearser.Rehearse(home.Run, larder, request).Kept;
            if (Section(step, home, here, stop) is { } section)
            {
                all.Add(section);
                minutes[step.Id] = new(home.Find(step.Id)?.AtHome.Minutes ?? section.Minutes, section.Minutes);
            }
        }

        return new(request, all);
    }

    private static BakedSection? Section(Step step, HomeBakes home, RunResult here, CancellationToken stop)
    {
        if (ReferenceEquals(here, home.Run.Result))
        {
            return home.Find(step.Id)?.AtHome;
        }

        if (ScaleOf(step, here) is not { } scale)
        {
            return SectionBakes.Here(null, here, step.Id, stop);
        }

        // A variant that the author timed has an oven of its own; what holds for both goes by the step as written.
        var written = home.Run.Result.Find(step.Id)?.Anchor?.Scale;
        var authors = ReferenceEquals(scale.Values, written?.Values) || Variants.Asked(step, here.Stage.Request) is not { } variant
            ? home.Find(step.Id)
            : home.OfVariant(step, variant, stop);
        return authors is null ? null : SectionBakes.Here(authors, here, step.Id, stop);
    }

    /// <summary>What the author's minutes fixed; null where nobody timed the bake.</summary>
    private static PerLane? ScaleOf(Step step, RunResult here) => (here.Anchors.TryGetValue(step.Id, out var carried) ? carried : here.Find(step.Id)?.Anchor)?.Scale;
}

using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Sides;

/// <summary>Whose measurements two recipes are rehearsed by.</summary>
public enum Tested
{
    /// <summary>Each by its own.</summary>
    Each,

    /// <summary>Both by those of the first: nobody has measured the second since it was changed.</summary>
    First,

    /// <summary>Both by those of the second.</summary>
    Second,
}

/// <summary>Finds out whose measurements count.</summary>
public static class TestedSide
{
    /// <summary>
    /// A recipe that carries what was measured before it was changed has not been measured since. Its times would stand still at home whatever was
    /// changed, so it goes by those of the earlier one: the same hands, bowls and oven, another dough.
    /// </summary>
    /// <param name="earlier">Which of the two was there first; <see cref="Tested.Each"/> where that is not known.</param>
    /// <returns>The earlier one where both carry the same measurements of the same kitchen, and at least one; else each by its own.</returns>
    public static Tested Of(Recipe first, Recipe second, Tested earlier)
    {
        var (was, now) = earlier == Tested.Second ? (second, first) : (first, second);
        return Told(was.Home) == Told(now.Home) && Carries(was, now) ? earlier : Tested.Each;
    }

    /// <summary>Whether a recipe was measured otherwise than the one it came from.</summary>
    public static bool IsMeasuredAnew(Recipe earlier, Recipe later) =>
        later.Steps.Any(step => step.Measured is { } measured && earlier.FindStep(step.Id)?.Measured != measured);

    /// <summary>A kitchen as far as what was measured in it goes by it; a vessel that a step is done in stands in the step.</summary>
    private static Kitchen Told(Kitchen home) => home with { Name = "", Vessels = KitchenVessels.Unsaid };

    /// <summary>At least one measurement of the earlier, and none of its own.</summary>
    private static bool Carries(Recipe earlier, Recipe later) => later.Steps.Any(step => step.Measured is not null) && !IsMeasuredAnew(earlier, later);
}

using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Remedies;

/// <summary>Names the larder does not take as they stand, and lines that go in too warm or too cold.</summary>
internal static class LineRemedies
{
    private static readonly Temperature SoftButter = Temperature.FromCelsius(20);
    private static readonly Temperature Lukewarm = Temperature.FromCelsius(30);

    public static IEnumerable<KeyValuePair<string, Func<Found, IEnumerable<Remedy>>>> All =>
    [
        new("ingredient-read-as", found => Names(found, "readAs")),
        new("ingredient-not-known", found => Names(found, "nearest")),
        new("ingredient-not-clear", found => Names(found, "candidates")),
        new("raw-or-cooked-not-said", found => Names(found, "candidates")),
        new("butter-too-cold", Butter),
        new("butter-too-soft", Butter),
        new("liquid-above-boiling", Boiling),
        new("yeast-meets-heat", CoolerLiquid),
        new("egg-meets-heat", CoolerLiquid),
    ];

    /// <summary>Each name that was offered. The line's id follows its name, and so does every order that names it.</summary>
    private static IEnumerable<Remedy> Names(Found found, string argument)
    {
        if (found is not { Part: { } part, Line: { } line } || found.Word(argument) is not { } offered)
        {
            yield break;
        }

        foreach (var name in offered.Split(", ", StringSplitOptions.RemoveEmptyEntries).Where(name => !part.Lines.Any(other => other.Id == Slug.Of(name))))
        {
            yield return found.Remedy(
                Verbs.WriteName,
                recipe => recipe.Line(part.Id, line.Id, old => old with { Id = Slug.Of(name), Name = name }) with
                {
                    Steps = [.. recipe.Steps.Select(step => step.Component != part.Id ? step
                        : step.Ordered(order => [.. order.Select(id => id == line.Id ? Slug.Of(name) : id)]))],
                },
                ("name", name),
                ("old", line.Name));
        }
    }

    private static IEnumerable<Remedy> Butter(Found found)
    {
        if (found is { Part: { } part, Line: { } line })
        {
            yield return found.Remedy(
                Verbs.WriteWarmth,
                recipe => recipe.Line(part.Id, line.Id, old => old with { Warmth = LineWarmth.At(SoftButter) }),
                ("name", line.Name),
                ("celsius", SoftButter));
        }
    }

    private static IEnumerable<Remedy> Boiling(Found found)
    {
        if (found is { Part: { } part, Line: { } line })
        {
            yield return found.Remedy(
                Verbs.WriteBoiling,
                recipe => recipe.Line(part.Id, line.Id, old => old with { Warmth = new(WarmthKind.Boiling, null) }),
                ("name", line.Name));
        }
    }

    /// <summary>The hottest line that goes straight into the bowl goes in lukewarm.</summary>
    private static IEnumerable<Remedy> CoolerLiquid(Found found)
    {
        if (found.Step is { } step && found.Recipe.FindComponent(step.Component) is { } part
            && part.Lines.Where(line => line.Uses is null && IsHot(line)).MaxBy(Warmth) is { } hottest)
        {
            yield return found.Remedy(
                Verbs.WriteWarmth,
                recipe => recipe.Line(part.Id, hottest.Id, old => old with { Warmth = LineWarmth.At(Lukewarm) }),
                ("name", hottest.Name),
                ("celsius", Lukewarm));
        }
    }

    private static bool IsHot(Line line) => Warmth(line) > 40;

    private static double Warmth(Line line) => line.Warmth.Kind == WarmthKind.Boiling ? 100 : line.Warmth.Stated?.Celsius ?? 0;
}

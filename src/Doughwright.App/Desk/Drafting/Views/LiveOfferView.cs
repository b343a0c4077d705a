using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Live;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>A live value that can be put into words.</summary>
/// <param name="Words">Without the brackets: "bulk time".</param>
/// <param name="Reads">What stands there at home, now.</param>
public sealed record LiveOfferView(string Words, string Reads)
{
    private const int Most = 7;

    /// <summary>Values like what is typed behind an open bracket; those of the step itself first.</summary>
    /// <param name="step">Id of the step whose words they are; null outside the steps.</param>
    internal static IReadOnlyList<LiveOfferView> All(Recipe recipe, Rehearsal atHome, string? step, string typed, Voice voice)
    {
        var begin = Slug.Of(typed);
        return
        [
            .. LiveNames.All(recipe, step)
                .Select((name, order) => (Name: name, Slug: Slug.Of(name.Words), Order: order))
                .DistinctBy(one => one.Slug)
                .Where(one => one.Slug.StartsWith(begin, StringComparison.Ordinal) || one.Slug.Contains("-" + begin, StringComparison.Ordinal))
                .DistinctBy(one => one.Name with { Words = "" })
                .OrderBy(one => one.Slug.StartsWith(begin, StringComparison.Ordinal) ? 0 : 1)
                .ThenBy(one => one.Name.Step == step && step is not null ? 0 : 1)
                .ThenBy(one => one.Order)
                .Take(Most)
                .Select(one => new LiveOfferView(one.Name.Words, LiveProse.Read(one.Name, atHome, voice))),
        ];
    }

    /// <summary>What is typed behind the bracket that is open where the caret is; null where none is.</summary>
    /// <param name="before">As it was before the last letter: where the two part is the caret.</param>
    internal static string? Asked(string before, string typed)
    {
        var shorter = Math.Min(before.Length, typed.Length);
        var (same, behind) = (0, 0);
        while (same < shorter && before[same] == typed[same])
        {
            same++;
        }

        while (behind < shorter - same && before[^(behind + 1)] == typed[^(behind + 1)])
        {
            behind++;
        }

        var caret = typed.Length - behind;
        var open = caret == 0 ? -1 : typed.LastIndexOf('[', caret - 1);
        return open < 0 || typed.AsSpan(open + 1, caret - open - 1).ContainsAny(']', '\n') ? null : typed[(open + 1)..caret];
    }
}

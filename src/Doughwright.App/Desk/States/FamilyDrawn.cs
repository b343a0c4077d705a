using Doughwright.Book.Papers;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Family;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.States;

/// <summary>The family line of a recipe as markup, for a wide page and for a narrow one.</summary>
public sealed record FamilyDrawn(string Wide, string Tall)
{
    /// <param name="relatives">The base of the recipe, and what has grown from it.</param>
    /// <param name="picked">States that the page is about.</param>
    /// <returns>Null where nothing was kept and nothing has grown: a rope with one end is no line.</returns>
    internal static FamilyDrawn? Of(string title, Paper paper, RecipeStates states, IReadOnlyList<FamilyMember> relatives, IReadOnlyCollection<long> picked, StateDays days, Voice voice)
    {
        var now = states.Kept.FirstOrDefault(known => known.State == states.Now);
        var all = states.Kept.DistinctBy(known => known.State).Where(known => known.State != states.Now)
            .Select(known => new Knot(known.State, new(Capital.Of(days.Day(known.At)), SaidOf(known, voice), picked.Contains(known.State))))
            .Append(new(states.Now, new(
                Capital.Of(days.Day(now?.At ?? paper.At)),
                now is { Name.Length: > 0 } ? voice.Say("family.picture.now-named", ("name", now.Name)) : voice.Words["states.now"],
                picked.Contains(states.Now))))
            .OrderBy(knot => knot.State).ToArray();
        FamilyOffshoot[] offshoots = [.. relatives.Where(member => member.GrownFrom is not null).Select(member => new FamilyOffshoot(member.Title, member.Most, Place(member.GrownFrom!.Value, [.. all.Select(knot => knot.State)])))];
        if (all.Length == 1 && offshoots.Length == 0)
        {
            return null;
        }

        var line = new FamilyLine(title, [.. all.Select(knot => knot.Drawn)], offshoots);
        return new(FamilyPicture.Wide(line, voice, "family-wide"), FamilyPicture.Tall(line, voice, "family-tall"));
    }

    /// <summary>The number of the knot of a state, or half a knot after the last one that was written before it.</summary>
    private static double Place(long state, IReadOnlyList<long> knots)
    {
        var before = knots.Count(knot => knot <= state) - 1;
        return before >= 0 && knots[before] == state ? before : before + 0.5;
    }

    private static string SaidOf(KeptState kept, Voice voice) => kept.Name.Length > 0 ? kept.Name : kept.Published ? voice.Words["family.picture.published"] : "";

    private sealed record Knot(long State, FamilyKnot Drawn);
}

using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>Everything that counts as one thing, in the order of names.</summary>
/// <param name="Name">What it counts as, and how many there are.</param>
public sealed record LarderRole(string Name, IReadOnlyList<LarderRow> Rows)
{
    internal static IReadOnlyList<LarderRole> All(Larder larder, Voice voice) =>
    [
        .. larder.Ingredients.GroupBy(row => row.Role).OrderBy(group => group.Key).Select(group => new LarderRole(
            voice.Say("larder.of-role", ("role", LarderWords.Capital(voice.Member(group.Key))), ("count", group.Count())),
            [.. group.OrderBy(row => row.Name, StringComparer.OrdinalIgnoreCase).Select(row => LarderRow.Of(row, voice))])),
    ];
}

using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>An ingredient in a list.</summary>
/// <param name="Holds">What it consists of, in a sentence.</param>
public sealed record LarderRow(string Title, string Address, string CountsAs, string Holds)
{
    internal static LarderRow Of(Ingredient row, Voice voice) => new(
        LarderWords.Capital(row.Name),
        "/larder/" + Uri.EscapeDataString(row.Id),
        voice.Say("larder-role", ("role", voice.Member(row.Role))),
        LarderWords.Holds(row, voice));
}

using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>An ingredient in a list.</summary>
/// <param name="Holds">What it consists of, in a sentence.</param>
/// <param name="IsOwn">Whether it is the author's own.</param>
public sealed record LarderRow(string Title, string Address, string CountsAs, string Holds, bool IsOwn)
{
    internal static LarderRow Of(Ingredient row, Voice voice) => new(
        LarderWords.Capital(row.Name),
        "/larder/" + Uri.EscapeDataString(row.Id),
        voice.Say("larder-role", ("role", voice.Member(row.Role))),
        LarderWords.Holds(row, voice),
        false);

    internal static LarderRow Of(OwnPaper paper, Voice voice) => paper.Own is { } own
        ? new(own.Name, paper.Address, LarderWords.CountsAs(own, voice), LarderWords.Holds(own.Ingredient, voice), true)
        : new(paper.Title, paper.Address, voice.Words["larder.own"], voice.Words["larder.own-not-understood"], true);
}

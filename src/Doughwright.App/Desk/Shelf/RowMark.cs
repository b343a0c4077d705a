using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Keys;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>How many findings of a shape there are.</summary>
/// <param name="Mark">Markup of the shape.</param>
internal sealed record RowMark(string Mark, string Words)
{
    public static RowMark Of(KeptCount count, Voice voice)
    {
        var shape = Enum.Parse<MarkShape>(count.Mark);
        return new(FindingMark.Draw(shape), voice.Say("shelf.mark." + Voice.Kebab(count.Mark) + (count.Count == 1 ? "" : "s"), ("count", count.Count)));
    }
}

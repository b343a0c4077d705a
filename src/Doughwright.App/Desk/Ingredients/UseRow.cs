using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>A recipe that an ingredient stands in, with the line.</summary>
/// <param name="As">What the line calls it.</param>
/// <param name="OfFlour">On all flour of the dough.</param>
public sealed record UseRow(string Title, string Address, string Part, string As, Fig Weight, Fig OfFlour)
{
    internal static IReadOnlyList<UseRow> All(IReadOnlyList<LineUse> uses, Voice voice) => [.. uses.Select(use => Of(use, voice))];

    private static UseRow Of(LineUse use, Voice voice)
    {
        var (line, none) = (use.Line, new Fig(voice.Words["larder.none"]));
        return new(
            use.Title,
            ShelfAddress.InMeasures("/recipes/" + Uri.EscapeDataString(use.Recipe), voice),
            use.Part,
            line.Name,
            line.IsMassKnown ? new(voice.Text(line.Mass), line.Mass.Grams, use.Of + ".grams") : none,
            line.OverallPercent is { } share ? new(voice.Text(share), share.Value, use.Of + ".overallPercent") : none);
    }
}

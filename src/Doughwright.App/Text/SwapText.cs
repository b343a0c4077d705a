using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>What a swap costs: lines before and after, what is left over, the rises, what to buy, consequences.</summary>
internal static class SwapText
{
    public static string Write(Recipe recipe, Swapped swapped, IReadOnlyList<RehearsedStep> times, Voice voice)
    {
        var page = new Page();
        page.Paragraph(voice.Say(swapped.IsRefused ? "swap.refused" : "swap.done", ("title", recipe.Title)));
        if (!swapped.IsRefused && swapped.Lines.Count == 0)
        {
            page.Paragraph(voice.Words["swap.nothing-changed"]);
        }

        WriteLines(page, recipe, swapped, voice);
        WriteTimes(page, times, voice);
        WriteBuy(page, swapped, voice);
        if (swapped.Consequences.Count > 0)
        {
            FindingsText.WriteSection(page, [.. swapped.Consequences.OrderByDescending(finding => finding.Grade)], voice);
        }

        return page.ToString();
    }

    public static string WriteOffers(Recipe recipe, IReadOnlyList<SwapOffer> offers, Voice voice)
    {
        var page = new Page();
        if (offers.Count == 0)
        {
            page.Paragraph(voice.Words["swap.no-offers"]);
            return page.ToString();
        }

        page.Paragraph(voice.Say("swap.offers", ("title", recipe.Title)));
        foreach (var offer in offers)
        {
            var key = offer.Wish.IsWithout ? "swap.offer-without" : offer.Wish.Part is null ? "swap.offer" : "swap.offer-in";
            page.Heading(voice.Say(key, ("what", offer.Wish.What), ("by", offer.Wish.By), ("part", offer.Wish.Part)));
            if ((offer.Allowed?.Words ?? offer.Without?.Words) is { } words)
            {
                page.Paragraph(words, 2);
            }

            WriteLines(page, recipe, offer.Result, voice);
            foreach (var refused in offer.Result.Consequences.Where(_ => offer.Result.IsRefused))
            {
                page.Paragraph(FindingWords.Message(refused, voice), 2);
            }
        }

        return page.ToString();
    }

    private static void WriteLines(Page page, Recipe recipe, Swapped swapped, Voice voice)
    {
        if (swapped.Lines.Count > 0)
        {
            page.Gap();
            var table = new Table(
                new(voice.Words["swap.head-part"], Align.Left),
                new(voice.Words["swap.head-line"], Align.Left),
                new(voice.Words["swap.head-before"], Align.Right),
                new(voice.Words["swap.head-after"], Align.Right));
            foreach (var line in swapped.Lines)
            {
                table.Add(recipe.FindComponent(line.Component)!.Name, NameOf(line, voice), Of(line.Before, voice), Of(line.After, voice));
            }

            table.WriteTo(page);
            page.Gap();
            foreach (var residual in swapped.Residuals)
            {
                page.Paragraph(voice.Say(
                    residual.Component is null ? "swap.left-dough" : "swap.left-part",
                    ("part", residual.Component is { } part ? recipe.FindComponent(part)!.Name : ""),
                    ("water", Signed(residual.Water, voice)),
                    ("sugar", Signed(residual.Sugar, voice)),
                    ("fat", Signed(residual.Fat, voice)),
                    ("salt", Signed(residual.Salt, voice))));
            }
        }
    }

    private static void WriteTimes(Page page, IReadOnlyList<RehearsedStep> times, Voice voice)
    {
        if (times.Count > 0)
        {
            page.Gap();
            page.Paragraph(voice.Say("swap.times", ("times", times.Select(step => voice.Say(
                "swap.time",
                ("step", step.Name),
                ("minutes", step.Time!.Value.Likely),
                ("range", voice.Range(step.Time.Value.Low, step.Time.Value.High, inSentence: true)),
                ("home", step.HomeTime))))));
        }
    }

    private static void WriteBuy(Page page, Swapped swapped, Voice voice)
    {
        if (swapped.Buy.Count > 0)
        {
            page.Gap();
            page.Paragraph(voice.Say("swap.buy", ("changes", swapped.Buy.Select(change => voice.Say(
                "swap.buy-change",
                ("name", change.Name),
                ("after", change.After is { } after ? after : voice.Words["swap.none-of-it"]),
                ("before", change.Before is { } before ? before : voice.Words["swap.none-of-it"]))))));
        }
    }

    private static string NameOf(SwappedLine line, Voice voice) => line.NameBefore is { } before && line.NameAfter is { } after && before != after
        ? voice.Say("swap.becomes", ("before", before), ("after", after))
        : (line.NameAfter ?? line.NameBefore)!;

    private static string Of(Mass? mass, Voice voice) => mass is { } known ? voice.Text(known) : voice.Words["swap.none"];

    private static string Signed(Percent? percent, Voice voice) =>
        percent is not { } known ? voice.Words["not-known"] : (known.Value >= 0.05 ? "+" : "") + voice.Text(known);
}

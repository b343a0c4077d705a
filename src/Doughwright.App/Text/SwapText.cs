using Doughwright.Engine.Formulas.Swaps;
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
        WriteTimes(page, recipe, times, voice);
        WriteBuy(page, recipe, swapped, voice);
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
            page.Heading(new SwapWords(recipe, voice).WishOf(offer.Wish));
            if ((offer.Allowed?.Words ?? offer.Without?.Words) is { } words)
            {
                page.Paragraph(words, 2);
            }

            if (offer.Without is not null && !offer.Result.IsRefused)
            {
                page.Paragraph(voice.Words["swap.only-left-out"], 2);
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
            var words = new SwapWords(recipe, voice);
            var table = new Table(
                new(voice.Words["swap.head-part"], Align.Left),
                new(voice.Words["swap.head-line"], Align.Left),
                new(voice.Words["swap.head-before"], Align.Right),
                new(voice.Words["swap.head-after"], Align.Right));
            foreach (var line in swapped.Lines)
            {
                table.Add(words.PartOf(line.Component), words.NameOf(line), words.Of(line.Before), words.Of(line.After));
            }

            table.WriteTo(page);
            page.Gap();
            foreach (var residual in swapped.Residuals)
            {
                page.Paragraph(words.Left(residual));
            }
        }
    }

    private static void WriteTimes(Page page, Recipe recipe, IReadOnlyList<RehearsedStep> times, Voice voice)
    {
        if (times.Count > 0)
        {
            page.Gap();
            page.Paragraph(voice.Say("swap.times", ("times", times.Select(new SwapWords(recipe, voice).Time))));
        }
    }

    private static void WriteBuy(Page page, Recipe recipe, Swapped swapped, Voice voice)
    {
        if (swapped.Buy.Count > 0)
        {
            page.Gap();
            page.Paragraph(voice.Say("swap.buy", ("changes", swapped.Buy.Select(new SwapWords(recipe, voice).Buy))));
        }
    }
}

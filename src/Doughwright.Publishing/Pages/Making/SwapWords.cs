using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pages.Measures;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Making;

/// <summary>The swaps that the author allows, each with what it costs.</summary>
internal sealed class SwapWords(Recipe recipe, Both both, Func<string, string> live)
{
    private const string AllergenComes = "swap-brings-allergen";

    public IEnumerable<string> All(IEnumerable<SwapOffer> offers) => offers.Where(offer => offer.Allowed is not null).Select(offer => Of(offer.Allowed!, offer.Result));

    private string Of(AllowedSwap swap, Swapped result)
    {
        var part = swap.Part is { } id ? Capital.Small(recipe.FindComponent(id)?.Name ?? id) : null;
        var head = both.Say(part is null ? "page.swap" : "page.swap-in", ("by", Capital.Of(swap.By)), ("what", Capital.Small(swap.What)), ("part", part));
        return string.Join(' ', [head, .. Prose.Paragraphs(swap.Words, live).Select(Sentence), .. Cost(result), Tried(swap)]);
    }

    private string Tried(AllowedSwap swap) => swap.Tried is { } day ? both.Say("page.swap-tried", ("day", day)) : both.Say("page.swap-not-tried");

    /// <summary>What is weighed instead, who may be hurt by it, or why it cannot be told.</summary>
    private IEnumerable<string> Cost(Swapped result)
    {
        if (result.IsRefused)
        {
            return result.Consequences.Where(finding => finding.Grade == Grade.Error).Select(finding => FindingWords.Message(finding, both.Voice));
        }

        // Allergens have a sentence of their own.
        var dangers = result.Consequences.Where(finding => finding is { Safety: true, Grade: Grade.Warning } && finding.Kind != AllergenComes);
        return
        [
            both.Say("page.swap-lines", ("lines", result.Lines.Select(Line))),
            .. result.Allergens.Gained.Count > 0 ? [both.Say("page.swap-allergens", ("allergens", result.Allergens.Gained))] : Array.Empty<string>(),
            .. dangers.Select(finding => FindingWords.Message(finding, both.Voice)).Distinct(),
        ];
    }

    private string Line(SwappedLine line) => line.Change switch
    {
        LineChange.Removed => both.Say("page.swap-out", ("name", Small(line.NameBefore)), ("before", Weight(line.Before))),
        LineChange.Replaced => both.Say("page.swap-for", ("name", Small(line.NameAfter)), ("after", Weight(line.After)), ("was", Small(line.NameBefore)), ("before", Weight(line.Before))),
        LineChange.Added => both.Say("page.swap-added", ("name", Small(line.NameAfter)), ("after", Weight(line.After))),
        _ => both.Say("page.swap-now", ("name", Small(line.NameAfter)), ("after", Weight(line.After)), ("before", Weight(line.Before))),
    };

    private string Weight(Engine.Quantities.Mass? mass) => mass is { } known ? both.Weight(known) : both.Voice.Words["not-known"];

    /// <summary>In a list, authors begin small and end without a full stop.</summary>
    private static string Sentence(string words) => words.Length == 0 || words[^1] is '.' or '!' or '?' or '…' ? Capital.Of(words) : Capital.Of(words) + ".";

    private static string Small(string? name) => Capital.Small(name ?? "");
}

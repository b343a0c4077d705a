using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Text;
using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Swaps;

/// <summary>A swap that the recipe itself speaks of, with its cost, one link away.</summary>
/// <param name="Words">Whether the author has tried it, and what the author says of it.</param>
/// <param name="Cost">What it changes; or, when it is refused, why.</param>
/// <param name="Address">Null for one that is refused.</param>
public sealed record SwapOffered(string Name, string Words, IReadOnlyList<string> Cost, string? Address)
{
    /// <param name="address">Address of this page with one swap.</param>
    internal static IReadOnlyList<SwapOffered> All(RecipeFile file, Func<string, string> address, Voice voice) =>
        [.. Swapping.Offer(file.Recipe!, Larder.Shipped).Select(offer => Of(file.Recipe!, offer, address, voice))];

    private static SwapOffered Of(Recipe recipe, SwapOffer offer, Func<string, string> address, Voice voice)
    {
        var (wish, result) = (offer.Wish, offer.Result);
        var words = new SwapWords(recipe, voice);
        var part = wish.Part is { } named ? "@" + named : "";
        return new(
            Capital.Of(words.WishOf(wish)),
            offer.Allowed is { } allowed ? Tried(allowed, voice) : offer.Without?.Words ?? "",
            result.IsRefused
                ? [.. result.Consequences.Where(finding => finding.Grade == Grade.Error).Select(finding => FindingWords.Message(finding, voice))]
                : [.. offer.Without is null ? [] : (string[])[voice.Words["swap.only-left-out"]], .. new SwapAnswer(recipe, result, voice).Said()],
            result.IsRefused ? null : address($"{wish.What}{part}={wish.By}"));
    }

    private static string Tried(AllowedSwap allowed, Voice voice) =>
        voice.Say((allowed.Tried is null ? "swaps.not-tried" : "swaps.tried") + (allowed.Words is null ? "" : "-and"), ("day", allowed.Tried), ("words", allowed.Words));
}

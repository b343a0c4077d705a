using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Swaps;

/// <summary>What a swap does to the allergens of a recipe, in sentences. A map of what ingredients usually are; labels go before it.</summary>
internal static class AllergenWords
{
    public static IEnumerable<string> Of(AllergenChange change, Voice voice)
    {
        if (change.Gained.Count > 0)
        {
            yield return voice.Say("swaps.allergens-gained", ("names", change.Gained));
        }

        if (change.Lost.Count > 0)
        {
            yield return voice.Say("swaps.allergens-lost", ("names", change.Lost));
        }

        var same = change.Gained.Count + change.Lost.Count == 0;
        yield return change.After.Count == 0 ? voice.Words["swaps.allergens-none"]
            : voice.Say(same ? "swaps.allergens-same" : "swaps.allergens-after", ("names", change.After));
        if (change.ByLabel.Count > 0)
        {
            yield return voice.Say("swaps.allergens-by-label", ("names", change.ByLabel));
        }

        yield return voice.Words["swaps.allergens-map"];
    }
}

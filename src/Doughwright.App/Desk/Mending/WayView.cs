using Doughwright.App.Commands;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Mending;

/// <summary>A way out of a finding as a button.</summary>
/// <param name="Id">Of the remedy: what the form sends.</param>
/// <param name="Verb">What is done: "Add masher to the tools".</param>
public sealed record WayView(string Id, string Verb)
{
    internal static IReadOnlyList<WayView> All(Offers offers, Finding finding, Voice voice) =>
        [.. offers.For(finding).Select(offer => new WayView(offer.Remedy.Id, RemedyWords.Verb(offer.Remedy, voice)))];
}

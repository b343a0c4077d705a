using Doughwright.App.Commands;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Remedies;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Mending;

/// <summary>A recipe's text with a finding accepted, or accepted no longer: the same from the recipe's page and from the sheet.</summary>
internal static class AcceptedText
{
    /// <summary>Letters of a reason that still reads as one.</summary>
    public const int LongestReason = 200;

    /// <summary>Null with a fault when the reason cannot be taken.</summary>
    /// <param name="finding">One that can be accepted.</param>
    /// <param name="reason">As it was typed, tidied.</param>
    public static string? With(string text, Finding finding, string reason, Faults faults)
    {
        if (reason.Length == 0)
        {
            faults.Add("mend-no-reason");
            return null;
        }

        if (reason.Length > LongestReason)
        {
            faults.Add("mend-reason-long", ("letters", reason.Length), ("most", LongestReason));
            return null;
        }

        var changed = RecipeText.Change(text, recipe => Acceptances.Accept(recipe, finding, reason)).Text;
        // A text says everything it holds: a reason with a hidden mark in it cannot be read back.
        if (RecipeText.Read(changed) is not { Understood: true, Recipe: { } read } || read.Accepted.All(one => one.FindingId != finding.Id || one.Reason != reason))
        {
            faults.Add("mend-reason-signs", ("reason", reason));
            return null;
        }

        return changed;
    }

    /// <summary>What was typed as a reason, without what nobody sees of it.</summary>
    public static string Tidy(string? typed) => string.Join(' ', (typed ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    public static string Did(Finding finding, Voice voice) => voice.Say("mend.accepted", ("finding", FindingWords.Message(finding, voice)));

    /// <param name="id">Of the finding that is accepted no longer.</param>
    public static string Without(string text, string id) =>
        RecipeText.Change(text, recipe => recipe with { Accepted = [.. recipe.Accepted.Where(one => one.FindingId != id)] }).Text;

    public static string DidWithout(Accepted accepted, Voice voice) => voice.Say("mend.stopped", ("reason", accepted.Reason));
}

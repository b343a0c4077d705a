using Doughwright.Engine.Recipes;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Making;

/// <summary>Which findings a reader sees, and how.</summary>
internal static class FindingsForReaders
{
    private static readonly string[] Allergens = ["allergens", "allergens-by-label", "allergens-not-known"];

    /// <summary>Where somebody can be hurt: always shown, accepted or not. What a person may be allergic to comes last, with whom to ask.</summary>
    public static IEnumerable<string> Cautions(IReadOnlyList<Finding> findings, Voice voice)
    {
        var safety = findings.Where(finding => finding.Safety).ToLookup(finding => Allergens.Contains(finding.Kind));
        foreach (var finding in safety[false])
        {
            yield return Said(finding, voice);
        }

        foreach (var finding in safety[true])
        {
            yield return FindingWords.Message(finding, voice);
        }

        yield return voice.Words["page.ask-supplier"];
    }

    /// <summary>What is wrong or risky and was not accepted by the author. Hints are for the author alone.</summary>
    public static IEnumerable<string> Unsettled(IReadOnlyList<Finding> findings, Recipe recipe, Voice voice) => Acceptances.Judge(findings, recipe).Open
        .Where(finding => !finding.Safety && finding.Grade >= Grade.Warning)
        .Select(finding => Said(finding, voice));

    private static string Said(Finding finding, Voice voice) => $"{FindingWords.Message(finding, voice)} {FindingWords.WayOut(finding, voice)}";
}

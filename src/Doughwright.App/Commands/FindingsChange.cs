using Doughwright.App.Json;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Remedies;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Commands;

/// <summary>findings FILE --do or --accept: the text with a way out carried out, or with a finding accepted.</summary>
internal static class FindingsChange
{
    /// <summary>The changed text, or null when neither is asked for. What cannot be done is a fault.</summary>
    /// <param name="recipe">Null when a line was not understood.</param>
    public static Answer? Of(CommandRun run, InputFile file, Recipe? recipe, TextDocument? document, IReadOnlyList<Finding> findings)
    {
        var (given, options) = (run.Given, run.Options);
        if (!given.Has(options.Do) && !given.Has(options.Accept))
        {
            return null;
        }

        if (given.Has(options.Do) && given.Has(options.Accept))
        {
            given.Faults.Add("do-and-accept");
            return Answer.None;
        }

        var text = given.Has(options.Do)
            ? Carried(given, options, file.Text, Offers.Of(findings, recipe))
            : Accepted(given, options, recipe, document, findings);
        return text is null || given.Faults.Any ? Answer.None
            : new(run.Json ? JsonText.Of(json => json.WriteString("text", text)) : text, "", ExitCode.Done);
    }

    private static string? Carried(Given given, Options options, string text, Offers offers)
    {
        if (given.One(options.Do) is not { } asked)
        {
            return null;
        }

        if (offers.Find(asked) is { } remedy)
        {
            return remedy.CarryOut(text);
        }

        given.Faults.AddUnknown("remedy-unknown", asked, [.. offers.All.Select(offer => offer.Id)]);
        return null;
    }

    private static string? Accepted(Given given, Options options, Recipe? recipe, TextDocument? document, IReadOnlyList<Finding> findings)
    {
        var pairs = given.Pairs(options.Accept).ToArray();
        foreach (var (id, reason) in pairs)
        {
            if (findings.FirstOrDefault(finding => finding.Id == id) is not { } finding)
            {
                given.Faults.AddUnknown("finding-unknown", id, [.. findings.Where(known => Acceptances.Refusal(known) is null).Select(known => known.Id)]);
            }
            else if (finding.Safety)
            {
                given.Faults.Add("accept-safety", ("given", id));
            }
            else if (recipe is null || Acceptances.Refusal(finding) is not null)
            {
                given.Faults.Add("accept-error", ("given", id));
            }
            else
            {
                recipe = Acceptances.Accept(recipe, finding, reason);
            }
        }

        return recipe is null || pairs.Length == 0 ? null : RecipeText.Write(recipe, document).Text;
    }
}

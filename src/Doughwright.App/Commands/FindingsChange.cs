using Doughwright.App.Json;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Remedies;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Commands;

/// <summary>findings FILE --do or --accept: the text with ways out carried out, or with findings accepted.</summary>
internal static class FindingsChange
{
    /// <summary>The changed text, or null when neither is asked for. What cannot be done is a fault.</summary>
    public static Answer? Of(CommandRun run, InputFile file, WholeJudgement whole)
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
            ? Carried(given, options, file, whole)
            : Accepted(given, options, file.Text, whole);
        return text is null || given.Faults.Any ? Answer.None
            : new(run.Json ? JsonText.Of(json => json.WriteString("text", text)) : text, "", ExitCode.Done);
    }

    /// <summary>
    /// One after the other. Numbers are those of the list as it stands before the first; after each the findings are looked for again, so that the next is
    /// carried out on the text as it has become.
    /// </summary>
    private static string? Carried(Given given, Options options, InputFile file, WholeJudgement whole)
    {
        var asked = new List<(string Given, Remedy Remedy)>();
        var offers = whole.Offers;
        foreach (var word in given.All(options.Do))
        {
            if (offers.Find(word) is { } remedy)
            {
                asked.Add((word, remedy));
            }
            else if (offers.All.Count == 0)
            {
                given.Faults.Add("remedy-none", ("given", word));
            }
            else
            {
                given.Faults.AddUnknown("remedy-unknown", word, [.. offers.All.Select(offer => offer.Id)]);
            }
        }

        if (given.Faults.Any || asked.Count == 0)
        {
            return null;
        }

        var text = asked[0].Remedy.CarryOut(file.Text);
        for (var i = 1; i < asked.Count; i++)
        {
            if (WholeJudgement.Of(file, text).Offers.Find(asked[i].Remedy.Id) is { } remedy)
            {
                text = remedy.CarryOut(text);
            }
            else
            {
                var voice = given.Faults.Voice;
                given.Faults.Add(
                    "remedy-gone",
                    ("given", asked[i].Given),
                    ("verb", RemedyWords.Verb(asked[i].Remedy, voice)),
                    ("done", voice.List([.. asked.Take(i).Select(one => one.Given)])));
                return null;
            }
        }

        return text;
    }

    private static string? Accepted(Given given, Options options, string text, WholeJudgement whole)
    {
        var pairs = given.Pairs(options.Accept).ToArray();
        var wanted = new List<(Finding Finding, string Reason)>();
        foreach (var (id, reason) in pairs)
        {
            if (whole.All.FirstOrDefault(finding => finding.Id == id) is not { } finding)
            {
                string[] known = [.. whole.All.Where(other => Acceptances.Refusal(other) is null).Select(other => other.Id)];
                if (known.Length == 0)
                {
                    given.Faults.Add("finding-none", ("given", id), ("option", options.Accept.Name));
                }
                else
                {
                    given.Faults.AddUnknown("finding-unknown", id, known);
                }
            }
            else if (finding.Safety)
            {
                given.Faults.Add("accept-safety", ("given", id));
            }
            else if (whole.Recipe is null || Acceptances.Refusal(finding) is not null)
            {
                given.Faults.Add("accept-error", ("given", id));
            }
            else
            {
                wanted.Add((finding, reason));
            }
        }

        return given.Faults.Any || wanted.Count == 0 ? null
            : RecipeText.Change(text, recipe => wanted.Aggregate(recipe, (changed, one) => Acceptances.Accept(changed, one.Finding, one.Reason))).Text;
    }
}

using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;

namespace Doughwright.App.Commands;

/// <summary>
/// larder WORDS: the ingredients that are called so, the author's own among them, and everything the larder knows of them. Without words, what the larder holds.
/// </summary>
internal static class LarderCommand
{
    private const int LongestPhrase = 200;
    private const int MostHits = 6;

    private static readonly IReadOnlyDictionary<string, Region> Regions = new Dictionary<string, Region>(StringComparer.OrdinalIgnoreCase)
    {
        ["GB"] = Region.Britain,
        ["US"] = Region.UnitedStates,
        ["AU"] = Region.Australia,
        ["DE"] = Region.Germany,
        ["AT"] = Region.Austria,
        ["FR"] = Region.France,
        ["IT"] = Region.Italy,
    };

    public static Answer Run(CommandRun run)
    {
        var given = run.Given;
        var typed = given.Files(run.Options.File);
        var words = string.Join(' ', typed).Trim();
        if (words.Length > LongestPhrase)
        {
            given.Faults.Add("larder-words-long", ("length", words.Length), ("limit", LongestPhrase));
        }
        else if (typed.Count > 0 && !words.Any(char.IsLetterOrDigit))
        {
            given.Faults.Add("larder-words-blank", ("given", words));
        }

        var region = given.One(run.Options.Region) is { } code ? given.Word(run.Options.Region.Name, code, Regions) : null;
        var own = OwnOfBook.Find(given.One(run.Options.Folder), given.Faults);
        if (given.Faults.Any || own is null)
        {
            return Answer.None;
        }

        if (typed.Count == 0)
        {
            return new(run.Json ? LarderJson.Holdings(own) : LarderText.Holdings(own, run.Voice), "", ExitCode.Done);
        }

        var larder = own.Over(Larder.Shipped);
        var asked = new LarderAsked(larder, words, larder.Find(words, [], region), larder.Search(words, region, MostHits)) { Own = own };
        return new(run.Json ? LarderJson.Write(asked) : LarderText.Write(asked, run.Voice), "", ExitCode.Done);
    }
}

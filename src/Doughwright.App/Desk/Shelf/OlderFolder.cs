using System.Globalization;
using System.Text.RegularExpressions;
using Doughwright.App.Desk.Hosting;
using Doughwright.Book.Papers;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>
/// What a desk without a book left in its folder: recipes and kitchens as texts, the texts that recipes had before the desk changed them, and kitchens that were
/// taken away. All of it stays where it lies.
/// </summary>
/// <param name="Left">What is named like a text and no book can hold.</param>
internal sealed partial record OlderFolder(IReadOnlyList<FirstPaper> Papers, IReadOnlyList<LeftText> Left)
{
    private const string Earlier = "earlier";

    /// <summary>Beside each earlier text: what was done to it.</summary>
    private const string Note = ".then.txt";

    /// <summary>Letters of the longest note: a word, a hash, and a line of words.</summary>
    private const int LongestNote = 16 * 1024;

    private const string Stamps = "yyyyMMdd'T'HHmmss'Z'";
    private const string Did = "did";
    private const string Back = "back";

    /// <exception cref="IOException">A folder cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">Like it.</exception>
    public static OlderFolder Of(DataFolder folder, Words words)
    {
        var (papers, left) = (new List<FirstPaper>(), new List<LeftText>());
        foreach (var (name, text) in Taken(folder, new(folder.Recipes), left))
        {
            papers.Add(new(PaperSort.Recipe, name, [.. States(folder, name, text, words, left)]));
        }

        papers.AddRange(Kitchens(folder, words, left));
        return new(papers, left);
    }

    /// <summary>Where something that was left lies, by its place within the folder; null for what is no place of a text.</summary>
    public static (TextFolder Folder, string Name)? PlaceOf(DataFolder folder, string file) =>
        Place().Match(file) is { Success: true } match && !match.Groups["room"].Value.Split('/').Contains("..")
            ? (new(Path.Join(folder.Root, match.Groups["room"].Value), match.Groups["ending"].Value), match.Groups["name"].Value)
            : null;

    private static IEnumerable<(string Name, string Text)> Taken(DataFolder folder, TextFolder texts, List<LeftText> left)
    {
        var laid = LaidTexts.In(texts);
        left.AddRange(laid.NotTaken.Select(text =>
            new LeftText(Path.GetRelativePath(folder.Root, texts.FileOf(text.Name)).Replace(Path.DirectorySeparatorChar, '/'), text.Name, text.Trouble)));
        return laid.Texts;
    }

    /// <summary>The texts that a recipe had, each as the change before left it, and the one that it has now.</summary>
    private static IEnumerable<FirstState> States(DataFolder folder, string name, string now, Words words, List<LeftText> left)
    {
        var room = new DirectoryInfo(Path.Join(folder.Recipes, Earlier, name));
        // A change that another hand made between, or that nothing is noted of, is a change too.
        Change? change = null;
        var isFirst = true;
        string DidBefore(string text) => isFirst ? words["book.laid"]
            : change?.After != StateId.OfText(text) ? words["book.changed-outside"]
            : change.IsBack ? new Voice(words, MeasureSystem.Metric).Say("book.taken-back", ("what", change.Verb))
            : change.Verb;

        if (room.Exists && room.LinkTarget is null)
        {
            foreach (var (stamp, text) in Taken(folder, new(room.FullName), left).OrderBy(one => InOrder(one.Name)))
            {
                yield return new(text, DidBefore(text), change?.At ?? Instant(stamp));
                change = ChangeOf(Path.Join(room.FullName, stamp + Note), Instant(stamp));
                isFirst = false;
            }
        }

        var did = DidBefore(now);
        yield return new(now, did, change is not null && change.After == StateId.OfText(now) ? change.At : null);
    }

    /// <summary>Kitchens as they are, and those that were taken away: of several of one name the latest comes first, and what has a name that is taken gets a number.</summary>
    private static IEnumerable<FirstPaper> Kitchens(DataFolder folder, Words words, List<LeftText> left)
    {
        HashSet<string> names = new(StringComparer.Ordinal);
        foreach (var (name, text) in Taken(folder, new(folder.Kitchens), left))
        {
            names.Add(name);
            yield return new(PaperSort.Kitchen, name, [new(text, words["book.laid"])]);
        }

        var endings = !Directory.Exists(folder.Kitchens) ? [] : Directory.EnumerateFileSystemEntries(folder.Kitchens)
            .Select(file => TakenAway().Match(Path.GetFileName(file))).Where(match => match.Success)
            .Select(match => (Ending: match.Value, Age: match.Groups["age"].Value)).Distinct()
            .OrderBy(one => one.Age.Length == 0 ? long.MinValue : -long.Parse(one.Age, CultureInfo.InvariantCulture)).ToArray();
        foreach (var (ending, _) in endings)
        {
            foreach (var (name, text) in Taken(folder, new(folder.Kitchens, ending), left))
            {
                yield return new(PaperSort.Kitchen, TextNames.InTurn(name).First(names.Add), [new(text, words["book.laid"])], IsTakenAway: true);
            }
        }
    }

    /// <summary>What is noted of a change; null where nothing that can be read is.</summary>
    private static Change? ChangeOf(string note, DateTimeOffset? at)
    {
        try
        {
            var file = new FileInfo(note);
            return file is { Exists: true, LinkTarget: null, Length: <= LongestNote } && File.ReadAllLines(note) is [Did or Back, { } after, { } verb, ..] lines
                ? new(verb, lines[0] == Back, after, at)
                : null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static (string Second, int Turn) InOrder(string stamp) => stamp.Split('-') is [var second, var turn] && int.TryParse(turn, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
        ? (second, number)
        : (stamp, 1);

    private static DateTimeOffset? Instant(string stamp) =>
        DateTimeOffset.TryParseExact(stamp.Split('-')[0], Stamps, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out var at) ? at : null;

    [GeneratedRegex(@"\A(?<room>.+)/(?<name>[^/]+?)(?<ending>\.yaml(\.taken-away(-[1-9][0-9]{0,8})?)?)\z", RegexOptions.Singleline)]
    private static partial Regex Place();

    [GeneratedRegex(@"\.yaml\.taken-away(-(?<age>[1-9][0-9]{0,8}))?\z")]
    private static partial Regex TakenAway();

    /// <summary>What the desk did to a text.</summary>
    /// <param name="After">Hash of the text that came of it.</param>
    private sealed record Change(string Verb, bool IsBack, string After, DateTimeOffset? At);
}

using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Tests.Corpus;

/// <summary>A small change of a sound text that makes it wrong, with what should be said about it and where.</summary>
/// <param name="File">The sound text it was planted in.</param>
internal sealed record PlantedFault(string Id, string File, string[] Kinds, string[] Places, string Text)
{
    public bool IsToldBy(Finding finding) =>
        Kinds.Contains(finding.Kind) && Places.Any(place => finding.Place == place || finding.Place.StartsWith(place + ".", StringComparison.Ordinal));

    public static IReadOnlyList<PlantedFault> ReadAll(string file, IReadOnlyDictionary<string, string> sound) =>
        [.. file.ReplaceLineEndings("\n").Split("\n## ").Skip(1).Select(entry => Read(entry.Split('\n'), sound))];

    private static PlantedFault Read(string[] lines, IReadOnlyDictionary<string, string> sound)
    {
        var head = lines.Skip(1).TakeWhile(line => line.Length > 0 && char.IsAsciiLetter(line[0])).ToArray();
        string Said(string key) => head.Single(line => line.StartsWith(key + ": ", StringComparison.Ordinal))[(key.Length + 2)..];
        var text = "\n" + sound[Said("file")];
        foreach (var change in string.Join('\n', lines.Skip(1 + head.Length)).Split("\n@@\n"))
        {
            text = Change(lines[0], text, change);
        }

        return new(lines[0], Said("file"), Said("kinds").Split(", "), Said("places").Split(", "), text[1..]);
    }

    private static string Change(string id, string text, string change)
    {
        var lines = change.Split('\n').Where(line => line.Length > 0).ToArray();
        string Side(char mark) => string.Concat(lines.Where(line => line[0] == ' ' || line[0] == mark).Select(line => line[1..] + "\n"));
        var parts = text.Split("\n" + Side('-'));
        return parts.Length == 2 ? parts[0] + "\n" + Side('+') + parts[1] : throw new FormatException($"{id}: what is changed stands {parts.Length - 1} times in the text.");
    }
}

using System.Globalization;
using System.Text.RegularExpressions;

namespace Doughwright.App.Tests.Hostile;

/// <summary>Recipe texts with slips of every sort, always the same for the same number.</summary>
internal static partial class Mutations
{
    private static readonly string[] Numbers =
        ["0", "-1", "0.0001", "1e9", "999999999", "NaN", "Infinity", "1/2", "7,5", "010", "12:30", "3.14159265358979", "1,000", "0.5", "48", "100", "", "٣", "½"];

    private static readonly string[] Units = ["g", "kg", "mg", "oz", "lb", "C", "F", "min", "h", "d", "s", "m", "ft", "cm", "mm", "in", "%", "cups", "K", ""];

    private static readonly string[] Pieces =
    [
        "\t", "\0", "\u202e", "\u200b", "\ufeff", "\ud800", "\r", "\u2028", ":", ": ", "- ", "#", " # ", "|", ">", "\"", "'", "[", "{", "&a", "*a", "!t", "---", "<<: ", "\\",
        "<script>alert(1)</script>", "]]>", "all of it", "boiling", "from the fridge", "dough", "scald", "none", "e\u0301", "\U0001f956", "x", ",", ", ,", "%", "@", "`",
    ];

    private static readonly Lazy<string[]> TheSound = new(() =>
    [
        .. Directory.EnumerateFiles(House.PathTo("demo", "recipes"), "*.yaml")
            .Concat(Directory.EnumerateFiles(House.PathTo("tests", "data", "corpus", "sound"), "*.yaml"))
            .Concat(Directory.EnumerateFiles(House.PathTo("tests", "data", "texts"), "*.yaml"))
            .Order(StringComparer.Ordinal)
            .Select(File.ReadAllText),
    ]);

    /// <summary>The text with one to four slips.</summary>
    public static string Text(int number)
    {
        var random = new Random(number);
        var sound = TheSound.Value;
        var text = sound[random.Next(sound.Length)];
        for (var slips = 1 + random.Next(4); slips > 0; slips--)
        {
            text = Slip(text, random, sound);
        }

        return text;
    }

    /// <summary>A sound text.</summary>
    public static string Sound(Random random) => TheSound.Value[random.Next(TheSound.Value.Length)];

    /// <summary>One value with one slip, as somebody types it behind an option.</summary>
    public static string Value(string value, Random random) => random.Next(8) switch
    {
        0 or 1 or 2 => Exchange(value, Number(), random, Numbers),
        3 or 4 => Exchange(value, UnitOfValue(), random, Units),
        5 => Exchange(value, Word(), random, [.. Word().Matches(Sound(random)).Select(match => match.Value).Take(200)]),
        6 => value.Insert(random.Next(value.Length + 1), Pieces[random.Next(Pieces.Length)]),
        _ => value.Remove(random.Next(value.Length + 1)),
    };

    private static string Slip(string text, Random random, string[] sound) => random.Next(14) switch
    {
        0 or 1 or 2 => Exchange(text, Number(), random, Numbers),
        3 or 4 => Exchange(text, Unit(), random, Units),
        5 => Exchange(text, Word(), random, [.. Word().Matches(sound[random.Next(sound.Length)]).Select(match => match.Value).Take(200)]),
        6 => Lines(text, random, (lines, at) => lines.RemoveAt(at)),
        7 => Lines(text, random, (lines, at) => lines.Insert(random.Next(lines.Count), lines[at])),
        8 => Lines(text, random, (lines, at) => (lines[at], lines[random.Next(lines.Count)]) = (lines[random.Next(lines.Count)], lines[at])),
        9 => Lines(text, random, (lines, at) => lines[at] = new string(' ', random.Next(7)) + lines[at].TrimStart(' ')),
        10 => Lines(text, random, (lines, at) => lines.Insert(at, Line(sound[random.Next(sound.Length)], random))),
        11 => Lines(text, random, (lines, at) => lines.RemoveRange(at, Math.Min(lines.Count - at, 1 + random.Next(8)))),
        12 => text.Insert(random.Next(text.Length + 1), Pieces[random.Next(Pieces.Length)]),
        _ => Exchange(text, Number(), random, [(random.Next(1, 100_000) / 10.0).ToString(CultureInfo.InvariantCulture)]),
    };

    private static string Exchange(string text, Regex what, Random random, string[] instead)
    {
        var found = what.Matches(text);
        if (found.Count == 0 || instead.Length == 0)
        {
            return text;
        }

        var match = found[random.Next(found.Count)];
        return text[..match.Index] + instead[random.Next(instead.Length)] + text[(match.Index + match.Length)..];
    }

    private static string Lines(string text, Random random, Action<List<string>, int> change)
    {
        var lines = text.Split('\n').ToList();
        change(lines, random.Next(lines.Count));
        return string.Join('\n', lines);
    }

    private static string Line(string text, Random random)
    {
        var lines = text.Split('\n');
        return lines[random.Next(lines.Length)];
    }

    [GeneratedRegex(@"\d+(?:[.,]\d+)*")]
    private static partial Regex Number();

    [GeneratedRegex(@"(?<=\d )[A-Za-z]+")]
    private static partial Regex Unit();

    [GeneratedRegex(@"(?<=\d)[A-Za-z]+")]
    private static partial Regex UnitOfValue();

    [GeneratedRegex(@"[A-Za-z]{3,}")]
    private static partial Regex Word();
}

using System.Globalization;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using static Doughwright.Engine.Remedies.TextLines;

namespace Doughwright.Engine.Remedies;

/// <summary>Lines that were not understood, or say what cannot be, where what was probably meant is known.</summary>
internal static class TextRemedies
{
    private static readonly Dictionary<string, Func<Finding, IEnumerable<Remedy>>> All = new()
    {
        ["decimal-comma"] = finding => Word(finding, "piece") is { } piece && piece.Count(mark => mark == ',') == 1 ? Instead(finding, piece, piece.Replace(',', '.')) : [],
        ["unit-unknown"] = finding => Instead(finding, Word(finding, "typed"), Word(finding, "offer")),
        ["leading-zero"] = finding => Instead(finding, Word(finding, "typed"), Word(finding, "offer")),
        ["unknown-word"] = finding => Instead(finding, Word(finding, "word"), Word(finding, "nearest")),
        ["unknown-kind"] = finding => Instead(finding, Word(finding, "word"), Word(finding, "nearest")),
        ["unknown-role"] = finding => Instead(finding, Word(finding, "word"), Word(finding, "nearest")),
        ["order-unknown-line"] = finding => Instead(finding, Word(finding, "word"), Word(finding, "nearest")),
        ["nearly-known-word"] = finding => Instead(finding, Word(finding, "word"), Word(finding, "nearest")),
        ["unknown-key"] = finding => Instead(finding, Word(finding, "key"), Word(finding, "nearest")),
        ["step-of-unknown-part"] = finding => Instead(finding, Word(finding, "part"), Word(finding, "nearest")),
        ["negative-quantity"] = finding => Word(finding, "typed") is ['-', .. var rest] typed ? Instead(finding, typed, rest.Trim()) : [],
        ["clock-time"] = Clock,
        ["fraction"] = Fraction,
        ["measure-not-clear"] = Measures,
        ["more-than-a-quantity"] = finding => Word(finding, "piece") is { } piece ? Line(finding, Verbs.PutComma, piece, line => Replace(line, 1, " " + piece, ", " + piece)) : [],
        ["warmth-twice"] = finding => Word(finding, "words") is { } words ? Line(finding, Verbs.TakeOutWords, words, line => TakeOut(finding, line, words)) : [],
        ["order-twice"] = finding => Word(finding, "line") is { } words ? Line(finding, Verbs.TakeOutWords, words, line => TakeOut(finding, line, words)) : [],
        ["tab"] = finding => Line(finding, Verbs.PutSpaces, "", Spaces),
        ["indentation"] = Indent,
        ["space-after-colon"] = finding => Word(finding, "key") is { } key ? Instead(finding, key + ":", key + ": ") : [],
        ["control-character"] = Mark,
        ["direction-mark"] = Mark,
        ["broken-character"] = Mark,
        ["folded-block"] = finding => Instead(finding, Word(finding, "mark"), "|"),
        ["block-mark"] = finding => Instead(finding, Word(finding, "mark"), "|"),
        ["colon-in-words"] = Quotes,
        ["first-mark"] = Quotes,
        ["quote-open"] = finding => Word(finding, "mark") is { } mark ? Line(finding, Verbs.CloseQuote, mark, line => line + mark) : [],
        ["second-document"] = finding => [Text(finding, Verbs.DeleteLine, "", text => Drop(text, finding.Position.Line))],
        ["kind-missing"] = Kind,
        ["form-missing"] = finding => [Text(finding, Verbs.WriteFormFirst, "", FormFirst)],
        ["form-not-first"] = finding => [Text(finding, Verbs.WriteFormFirst, "", text => FormFirst(Drop(text, finding.Position.Line)))],
    };

    public static IEnumerable<string> Kinds => All.Keys;

    public static IEnumerable<Remedy> Of(Finding finding) =>
        All.TryGetValue(finding.Kind, out var offer) ? offer(finding)
            : finding.Kind.EndsWith("-outside-limits", StringComparison.Ordinal) ? OtherUnit.Of(finding)
            : [];

    /// <summary>Other words in place of some, where both are known.</summary>
    internal static IEnumerable<Remedy> Instead(Finding finding, string? old, string? fresh) =>
        old is null || fresh is null || old == fresh || !finding.Position.IsKnown ? [] :
        [
            Text(finding, Verbs.WriteInstead, fresh, text => Change(text, finding.Position.Line, line => Replace(line, finding.Position.Column, old, fresh))),
        ];

    private static IEnumerable<Remedy> Line(Finding finding, string verb, string words, Func<string, string> change) =>
        finding.Position.IsKnown ? [Text(finding, verb, words, text => Change(text, finding.Position.Line, change))] : [];

    private static Remedy Text(Finding finding, string verb, string words, Func<string, string> edit) => new()
    {
        FindingId = finding.Id,
        Verb = verb,
        Edit = edit,
        Arguments = new Dictionary<string, object> { ["words"] = words, ["line"] = finding.Position.Line },
    };

    internal static string? Word(Finding finding, string name) => finding.Arguments.GetValueOrDefault(name) as string is { Length: > 0 } word ? word : null;

    /// <summary>"12:30" is 12 h 30 min or 12 min 30 s; only the author knows which.</summary>
    private static IEnumerable<Remedy> Clock(Finding finding)
    {
        if (Word(finding, "typed") is not { } typed || typed.Split(':') is not [var first, var second] || !Digits(first) || !Digits(second))
        {
            return [];
        }

        var (large, small) = (first.TrimStart('0').PadLeft(1, '0'), second.TrimStart('0').PadLeft(1, '0'));
        return [.. Instead(finding, typed, $"{large} h {small} min"), .. Instead(finding, typed, $"{large} min {small} s")];
    }

    /// <summary>Each measure that "1 cup" can be of this ingredient.</summary>
    private static IEnumerable<Remedy> Measures(Finding finding) =>
        Word(finding, "typed") is { } typed && MixedNumber.Lead(typed) is var (_, length) && Word(finding, "known") is { } known
            ? known.Split(", ").SelectMany(unit => Instead(finding, typed, $"{typed[..length]} {unit}"))
            : [];

    /// <summary>"1/2 lb" is 0.5 lb; only fractions that end within three decimals.</summary>
    private static IEnumerable<Remedy> Fraction(Finding finding)
    {
        var typed = Word(finding, "typed") ?? "";
        if (MixedNumber.Lead(typed) is not var (value, length) || Math.Abs(Math.Round(value, 3) - value) > 1e-12)
        {
            return [];
        }

        return Instead(finding, typed, NumberText.Exact(value) + " " + typed[length..].TrimStart());
    }

    private static bool Digits(string text) => text.Length is > 0 and < 10 && text.All(char.IsAsciiDigit);

    private static string TakeOut(Finding finding, string line, string words)
    {
        var without = Replace(line, finding.Position.Column - 2, ", " + words, "");
        return without == line ? Replace(line, finding.Position.Column, words + ", ", "") : without;
    }

    private static string Spaces(string line)
    {
        var lead = line.TakeWhile(mark => mark is ' ' or '\t').Count();
        return line[..lead].Replace("\t", "  ", StringComparison.Ordinal) + line[lead..].Replace('\t', ' ');
    }

    private static IEnumerable<Remedy> Indent(Finding finding) => finding.Arguments.GetValueOrDefault("expected") is int expected and >= 0
        ? Line(finding, Verbs.Indent, expected.ToString(CultureInfo.InvariantCulture), line => new string(' ', expected) + line.TrimStart(' '))
        : [];

    /// <summary>A character that cannot be seen is taken out wherever its line has it.</summary>
    private static IEnumerable<Remedy> Mark(Finding finding) =>
        Word(finding, "code") is ['U', '+', .. var digits] code && int.TryParse(digits, NumberStyles.HexNumber, CultureInfo.InvariantCulture, out var mark)
            ? Line(finding, Verbs.DeleteMark, code, line => line.Replace(((char)mark).ToString(), "", StringComparison.Ordinal))
            : [];

    private static IEnumerable<Remedy> Quotes(Finding finding) => Word(finding, "words") is { } words
        ? Line(finding, Verbs.PutQuotes, words, line => Replace(line, 1, words, '"' + words.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + '"'))
        : [];

    private static IEnumerable<Remedy> Kind(Finding finding) => Word(finding, "nearest") is not { } nearest || !finding.Position.IsKnown ? [] :
    [
        Text(finding, Verbs.AddKind, nearest, text => InsertAfter(
            text, finding.Position.Line, new string(' ', IndentOf(text.Split('\n')[finding.Position.Line - 1]) + 2) + $"kind: {nearest}")),
    ];

    private static string FormFirst(string text) => text.StartsWith('\ufeff') ? "\ufeffdoughwright: 1\n" + text[1..] : "doughwright: 1\n" + text;
}

using System.Text.RegularExpressions;

namespace Doughwright.Publishing.Wording;

/// <summary>Words in which nothing is said twice: a range whose two ends read alike is one figure, and a bracket that only repeats the figure before it goes.</summary>
internal static partial class SaidOnce
{
    /// <param name="range">How a range is written, with {low} and {high}.</param>
    /// <param name="text">An argument as it reads, with its style: "now", "offered:asked"; null for one that is not there.</param>
    public static string Of(string template, string range, Func<string, string?> text)
    {
        var once = template;
        foreach (var (low, high) in ((string, string)[])[("{low}", "{high}"), ("{from}", "{to}")])
        {
            var both = range.Replace("{low}", low, StringComparison.Ordinal).Replace("{high}", high, StringComparison.Ordinal);
            if (once.Contains(both, StringComparison.Ordinal) && text(low[1..^1]) is { } first && first == text(high[1..^1]))
            {
                once = once.Replace(both, low, StringComparison.Ordinal);
            }
        }

        return Bracket().Replace(once, match => text(match.Groups[1].Value) is { } figure && figure == text(match.Groups[2].Value) ? $"{{{match.Groups[1].Value}}}" : match.Value);
    }

    /// <summary>"{now} ({low})".</summary>
    [GeneratedRegex(@"\{([^{}]+)\} \(\{([^{}]+)\}\)")]
    private static partial Regex Bracket();
}

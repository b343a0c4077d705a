using System.Text;
using System.Text.RegularExpressions;

namespace Doughwright.Publishing.Pages.Style;

/// <summary>Takes from a style sheet what a piece of markup uses, so that a page can carry the desk's own sheets and stay light.</summary>
internal static partial class StyleSheet
{
    /// <param name="css">A sheet of ours: rules, and blocks of rules behind @media and @supports.</param>
    /// <param name="used">What the markup is made of.</param>
    /// <returns>
    /// The rules of which every element and every class stands in the markup, without comments. Faces and paper sizes are left out: a page
    /// brings its own.
    /// </returns>
    public static string Used(string css, MarkupNames used)
    {
        var kept = new StringBuilder();
        Keep(Comment().Replace(css, ""), used, kept);
        return kept.ToString();
    }

    private static void Keep(string css, MarkupNames used, StringBuilder kept)
    {
        var at = 0;
        while (css.IndexOf('{', at) is var brace and >= 0)
        {
            var prelude = Space().Replace(css[at..brace].Trim(), " ");
            var end = EndOf(css, brace);
            var body = css[(brace + 1)..(end - 1)];
            at = end;
            if (prelude.StartsWith("@media", StringComparison.Ordinal) || prelude.StartsWith("@supports", StringComparison.Ordinal))
            {
                var inner = new StringBuilder();
                Keep(body, used, inner);
                if (inner.Length > 0)
                {
                    kept.Append(prelude).Append('{').Append(inner).Append("}\n");
                }
            }
            else if (prelude is [not '@', ..])
            {
                var selectors = Selectors(prelude).Where(selector => used.Hold(Elsewhere().Replace(selector, ""))).ToArray();
                if (selectors.Length > 0 && !string.IsNullOrWhiteSpace(body))
                {
                    kept.AppendJoin(',', selectors).Append('{').Append(Space().Replace(body.Trim(), " ")).Append("}\n");
                }
            }
        }
    }

    /// <summary>Where the block ends that the brace opens.</summary>
    private static int EndOf(string css, int brace)
    {
        var depth = 0;
        for (var at = brace; at < css.Length; at++)
        {
            depth += css[at] switch { '{' => 1, '}' => -1, _ => 0 };
            if (depth == 0)
            {
                return at + 1;
            }
        }

        throw new FormatException("A block of the style sheet is not closed.");
    }

    /// <summary>The selectors of a rule, parted at commas that stand in no parentheses.</summary>
    private static IEnumerable<string> Selectors(string prelude)
    {
        var (depth, from) = (0, 0);
        for (var at = 0; at < prelude.Length; at++)
        {
            depth += prelude[at] switch { '(' => 1, ')' => -1, _ => 0 };
            if (prelude[at] == ',' && depth == 0)
            {
                yield return prelude[from..at].Trim();
                from = at + 1;
            }
        }

        yield return prelude[from..].Trim();
    }

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();

    /// <summary>What a selector says of other elements or of states, parentheses of one depth within included.</summary>
    [GeneratedRegex(@"::?[a-z-]+(?:\((?:[^()]|\([^()]*\))*\))?|\[[^\]]*\]")]
    private static partial Regex Elsewhere();
}

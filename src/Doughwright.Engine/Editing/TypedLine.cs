using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Editing;

/// <summary>A line as it is typed on the desk, read by the grammar of the text.</summary>
internal static class TypedLine
{
    /// <summary>What was read, and why not.</summary>
    public static (Line? Line, IReadOnlyList<Finding> Reasons) Read(string name, string words, string place, Larder larder)
    {
        var (_, log) = SourceText.Of(name + words);
        var line = LineGrammar.Read(name, Position.None, new(Tidy(words), Position.None, place, log), larder);
        var reasons = log.Findings.Where(finding => finding.Grade == Grade.Error).ToArray();
        return (reasons.Length > 0 ? null : line, reasons);
    }

    /// <summary>A bare number gets the unit of the field it was typed into.</summary>
    public static string WithUnit(string typed, string unit)
    {
        var bare = typed.Trim();
        return bare.Length > 0 && QuantityText.TryNumber(bare).Ok ? $"{bare} {unit}".TrimEnd() : bare;
    }

    /// <summary>
    /// Parts "butter 50 g, soft", "50 g butter, soft" and "butter: 50 g" into name and words. A part's name alone is all of it. Null when there is no name or
    /// no amount.
    /// </summary>
    public static (string Name, string Words)? Split(string typed, Recipe recipe)
    {
        var words = Tidy(typed);
        var comma = words.IndexOf(", ", StringComparison.Ordinal);
        var (first, rest) = comma < 0 ? (words, "") : (words[..comma], words[comma..]);
        if (first.IndexOf(": ", StringComparison.Ordinal) is var colon and > 0)
        {
            return (first[..colon].Trim(), first[(colon + 2)..].Trim() + rest);
        }

        if (recipe.FindComponent(Slug.Of(first)) is not null)
        {
            return (first, LineGrammar.AllOfIt + rest);
        }

        var parts = first.Split(' ');
        for (var i = 1; i < parts.Length; i++)
        {
            var (left, right) = (string.Join(' ', parts[..i]), string.Join(' ', parts[i..]));
            if (IsAmount(right))
            {
                return (left, right + rest);
            }
        }

        // The longest amount in front: "1 lb 4 oz flour" is not a pound of something.
        for (var i = parts.Length - 1; i > 0; i--)
        {
            var (left, right) = (string.Join(' ', parts[..i]), string.Join(' ', parts[i..]));
            if (IsAmount(left))
            {
                return (right, left + rest);
            }
        }

        return null;
    }

    /// <summary>Whether words are an amount by themselves: "50 g", "12.5 %", "2 tbsp", "all of it".</summary>
    public static bool IsAmount(string typed) => typed == LineGrammar.AllOfIt || QuantityText.TryMass(typed).Ok
        || (LineGrammar.IsShare(typed) && QuantityText.TryPercent(typed).Ok) || MeasureGrammar.Read(typed) is not null;

    public static string Tidy(string typed) => string.Join(' ', typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}

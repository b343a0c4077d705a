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
        return (reasons.Length > 0 ? null : line, Rereading.AsTyped(reasons));
    }

    /// <summary>A bare number gets the unit of the field it was typed into. Fractions are taken as pages print them.</summary>
    public static string WithUnit(string typed, string unit)
    {
        var bare = typed.Trim();
        return (bare.Length > 0 && QuantityText.TryNumber(bare).Ok ? bare : PrintedAmounts.Bare(bare)) is { } number
            ? $"{number} {unit}".TrimEnd()
            : PrintedAmounts.Of(bare, QuantityKind.Mass, QuantityKind.Percent, QuantityKind.Temperature);
    }

    /// <summary>Whether words are an amount by themselves: "50 g", "12.5 %", "2 tbsp", "all of it".</summary>
    public static bool IsAmount(string typed) => IsWeighed(typed) || MeasureGrammar.Read(typed) is not null;

    /// <summary>Whether words are an amount that no larder has to weigh: "50 g", "12.5 %", "all of it".</summary>
    public static bool IsWeighed(string typed) => typed == LineGrammar.AllOfIt || QuantityText.TryMass(typed).Ok
        || (LineGrammar.IsShare(typed) && QuantityText.TryPercent(typed).Ok);

    public static string Tidy(string typed) => string.Join(' ', typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}

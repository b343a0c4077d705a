using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Editing;

/// <summary>What is typed under a key of a step, as pages print it, in the words of a text.</summary>
internal static class TypedStep
{
    private const string AboutSo = EndGrammar.About + " ";

    private static readonly string[] Timed =
        [StepKeys.Hands, StepKeys.Ends, StepKeys.Fold, StepKeys.Folds, StepKeys.Steam, StepKeys.Lid, StepKeys.Measured];

    private static readonly string[] Until = ["until ", "till "];

    /// <summary>"1 1/2 h" is 1.5 h. A time alone ends a step after it, one that is only about so by its cue, a temperature alone at it.</summary>
    public static string Of(StepKind kind, string key, string typed)
    {
        if (!Timed.Contains(key))
        {
            return typed;
        }

        var words = PrintedAmounts.Of(typed, QuantityKind.Duration, QuantityKind.Temperature);
        var bare = words.StartsWith(AboutSo, StringComparison.Ordinal) ? words[AboutSo.Length..].Trim() : words;
        return key switch
        {
            StepKeys.Hands or StepKeys.Measured => bare,
            StepKeys.Ends when QuantityText.TryDuration(bare).Ok => bare == words ? $"{EndGrammar.After} {bare}" : $"{EndGrammar.ByItsCue}, {AboutSo}{bare}",
            StepKeys.Ends when QuantityText.TryTemperature(words).Ok => kind == StepKind.Bake ? $"{EndGrammar.CoreAt} {words}" : $"{EndGrammar.At} {words}",
            _ => words,
        };
    }

    /// <summary>Why words that pages print can be no time or end of a step; null where the reader of the text decides.</summary>
    public static EditAnswer? Refusal(string step, string key, string typed)
    {
        if (Timed.Contains(key) && TypedRange.In(typed) is { } range)
        {
            return key == StepKeys.Ends
                ? EditAnswer.Refuse("edit-end-range", Places.OfStep(step), ("typed", range.Words), ("middle", range.Middle))
                : EditAnswer.Refuse("edit-range", Places.OfStep(step), ("typed", range.Words), ("middle", range.Middle));
        }

        return key == StepKeys.Ends && Until.Any(word => typed.StartsWith(word, StringComparison.OrdinalIgnoreCase))
            ? EditAnswer.Refuse("edit-end-is-cue", Places.OfStep(step), ("typed", typed))
            : null;
    }
}

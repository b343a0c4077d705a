using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Editing;

/// <summary>A recipe read again from its own text with something said otherwise there: what the text cannot mean is refused with the reader's reasons.</summary>
internal static class Rereading
{
    /// <summary>
    /// What a text is told of what stands in it is not so of what was typed into a field: that was not left out, the value before it stays, and there are
    /// no commas around it.
    /// </summary>
    public static IReadOnlyList<Finding> AsTyped(IReadOnlyList<Finding> reasons) =>
        [.. reasons.Select(reason => reason.Kind == QuantityFaults.KindOf(QuantityFault.Negative) ? reason with { Kind = "edit-negative" } : reason)];

    /// <param name="change">Of the tree of the whole text.</param>
    public static EditAnswer Of(Recipe recipe, Func<TextMapping, TextMapping> change, Deed deed)
    {
        var text = Writing.Of(change(RecipeWriter.Write(recipe)), null).Text;
        var known = RecipeText.Read(RecipeText.Write(recipe)).Findings.Select(finding => finding.Id).ToHashSet();
        var reading = RecipeText.Read(text);
        var faults = reading.Findings.Where(finding => finding.Grade == Grade.Error && !known.Contains(finding.Id)).ToArray();
        return faults.Length > 0 || reading.Recipe is not { } changed
            ? new EditAnswer.Refused(AsTyped(faults.Length > 0 ? faults : [.. reading.Findings.Where(finding => finding.Grade == Grade.Error)]))
            : new EditAnswer.Done(changed, deed);
    }

    /// <summary>The mapping under a key changed; a mapping that is not there yet is put at the end, one of nothing is left out.</summary>
    public static TextMapping In(this TextMapping tree, string key, Func<TextMapping, TextMapping> change)
    {
        var inner = change(tree.Entries.FirstOrDefault(entry => entry.Key == key)?.Value as TextMapping ?? new([], Position.None));
        return tree.With(key, inner.Entries.Count == 0 ? null : new(key, Position.None, inner, [], null));
    }

    /// <summary>The mapping with another entry under a key, where the old one stood; null takes it out.</summary>
    public static TextMapping With(this TextMapping tree, string key, TextEntry? entry)
    {
        var at = tree.Entries.ToList().FindIndex(one => one.Key == key);
        var entries = tree.Entries.Where(one => one.Key != key).ToList();
        if (entry is not null)
        {
            entries.Insert(at < 0 ? entries.Count : at, entry);
        }

        return tree with { Entries = entries };
    }
}

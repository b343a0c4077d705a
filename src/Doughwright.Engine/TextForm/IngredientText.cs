using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>Reads and writes an ingredient of the author's own as a text of its own: the keys that it has in a recipe, under its name.</summary>
public static class IngredientText
{
    internal const string NameKey = "ingredient";

    /// <summary>The keys of the text behind its first line, in the order of the form.</summary>
    public static IReadOnlyList<string> Keys { get; } = [NameKey, .. OwnSection.Keys];

    /// <summary>What an ingredient can count as, as a text writes it.</summary>
    public static IReadOnlyList<string> Roles { get; } = [.. EnumWords<Ingredients.Role>.All];

    /// <summary>Reads a text. Never throws for what a person wrote: all faults are findings, all at once.</summary>
    public static IngredientReading Read(string text)
    {
        var (document, log) = TreeReader.Read(text);
        if (document is null)
        {
            return new(null, log.Findings, null);
        }

        if (!FormLine.Check(document, log))
        {
            return new(null, [.. log.Findings.Where(finding => finding.Kind == FormFaults.FormNewer)], document);
        }

        var root = new Section(document.Root, "", log, [FormLine.Key, .. Keys]);
        var name = root.Words(NameKey)?.Text ?? "";
        if (Slug.Of(name).Length == 0)
        {
            log.Wrong(FormFaults.IngredientNameMissing, root.PlaceOf(NameKey), root.Entry(NameKey)?.KeyPosition ?? new(1, 1));
        }

        var own = OwnSection.ReadOne(root, name, root.Entry(NameKey)?.KeyPosition ?? new(1, 1), null);
        return new(Slug.Of(name).Length == 0 ? null : own, log.Findings, document);
    }

    /// <summary>The canonical text: equal ingredients give equal texts.</summary>
    public static string Write(OwnIngredient own) =>
        Writing.Of(OwnWriter.Over(new TreeBuilder().Words(FormLine.Key, "1").Words(NameKey, own.Name), own, null).Mapping, null).Text;

    /// <summary>What is said behind each key of a text, as it was typed.</summary>
    public static IReadOnlyDictionary<string, string> Fields(TextDocument document) => FieldsOfText.Of(document);

    /// <summary>A text from what was typed behind each key, sound or not. What says nothing is left out.</summary>
    /// <param name="older">A text whose comments go along.</param>
    public static string OfFields(IEnumerable<(string Key, string Typed)> fields, TextDocument? older = null) => FieldsOfText.Text(fields, [], older);
}

/// <summary>What came of reading the text of an ingredient.</summary>
/// <param name="Own">Null when it has no name, or does not say what it counts as.</param>
public sealed record IngredientReading(OwnIngredient? Own, IReadOnlyList<Finding> Findings, TextDocument? Document)
{
    /// <summary>Nothing is wrong: no finding of grade error.</summary>
    public bool Sound => !Findings.Any(finding => finding.Grade == Grade.Error);
}

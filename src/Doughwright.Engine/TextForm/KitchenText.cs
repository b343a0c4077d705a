using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>Reads and writes kitchens as text: the keys of a recipe's home, in a file of their own.</summary>
public static class KitchenText
{
    internal const string NameKey = "kitchen";

    /// <summary>The keys of the text behind its first line, in the order of the form.</summary>
    public static IReadOnlyList<string> Keys { get; } = [NameKey, .. KitchenSection.Keys];

    /// <summary>The words that can stand behind a key; null where it is written freely.</summary>
    public static IReadOnlyList<string>? Choices(string key) => key switch
    {
        KitchenSection.Oven => [.. EnumWords<OvenMode>.All],
        KitchenSection.OvenSteam => [.. EnumWords<OvenSteam>.All],
        _ => null,
    };

    /// <summary>Reads a text. Never throws for what a person wrote: all faults are findings, all at once.</summary>
    public static KitchenReading Read(string text)
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

        var root = new Section(document.Root, "", log, [FormLine.Key, NameKey, .. KitchenSection.Keys]);
        if (!root.Has(NameKey))
        {
            log.Wrong(FormFaults.KitchenNameMissing, "", new(1, 1));
        }

        var (kitchen, airKnown) = KitchenSection.Read(root, root.Words(NameKey)?.Text ?? "", new(1, 1), log);
        // A value outside what can be is not worked with: another one in its place would be a kitchen that nobody has.
        return new(airKnown && log.Findings.All(finding => finding.Grade != Grade.Error) ? kitchen : null, log.Findings, document);
    }

    /// <summary>What is said behind each key of a text, as it was typed; vessels line by line.</summary>
    public static IReadOnlyDictionary<string, string> Fields(TextDocument document) => FieldsOfText.Of(document);

    /// <summary>A text from what was typed behind each key, sound or not. What says nothing is left out.</summary>
    /// <param name="older">A text whose comments go along.</param>
    public static string OfFields(IEnumerable<(string Key, string Typed)> fields, TextDocument? older = null) => FieldsOfText.Text(fields, [KitchenSection.Vessels], older);

    /// <summary>The canonical text of a kitchen file.</summary>
    public static string Write(Kitchen kitchen) => Writing.Of(KitchenWriter.File(kitchen), null).Text;

    /// <summary>The canonical text with the comments of an older text where they stood.</summary>
    public static Writing Write(Kitchen kitchen, TextDocument? older) => Writing.Of(KitchenWriter.File(kitchen), older);
}

using Doughwright.Engine.Kitchens;

namespace Doughwright.Engine.TextForm;

/// <summary>Reads and writes kitchens as text: the keys of a recipe's home, in a file of their own.</summary>
public static class KitchenText
{
    internal const string NameKey = "kitchen";

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
        return new(airKnown ? kitchen : null, log.Findings, document);
    }

    /// <summary>The canonical text of a kitchen file.</summary>
    public static string Write(Kitchen kitchen) => Writing.Of(KitchenWriter.File(kitchen), null).Text;

    /// <summary>The canonical text with the comments of an older text where they stood.</summary>
    public static Writing Write(Kitchen kitchen, TextDocument? older) => Writing.Of(KitchenWriter.File(kitchen), older);
}

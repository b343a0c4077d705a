using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.TextForm;

/// <summary>The first line of every text: which form it is written in.</summary>
internal static class FormLine
{
    public const string Key = "doughwright";
    public const int Form = 1;

    /// <summary>False when the text is of a newer form, of which nothing can be said.</summary>
    public static bool Check(TextDocument document, FindingLog log)
    {
        var entries = document.Root.Entries;
        var line = entries.FirstOrDefault(entry => entry.Key == Key);
        if (line is null)
        {
            log.Fault(FormFaults.FormMissing, "", new(1, 1));
            return true;
        }

        if (entries[0] != line)
        {
            log.Fault(FormFaults.FormNotFirst, Key, line.KeyPosition, ("line", line.KeyPosition.Line));
        }

        if (Section.WordsOf(line, Key, log) is not { } words || words.Text == "1")
        {
            return true;
        }

        if (QuantityText.TryCount(words.Text).Value is > Form)
        {
            log.Fault(FormFaults.FormNewer, Key, words.Position, ("form", words.Text), ("known", Form));
            return false;
        }

        words.Fault(FormFaults.UnknownWord, ("word", words.Text), ("nearest", "1"), ("known", "1"));
        return true;
    }
}

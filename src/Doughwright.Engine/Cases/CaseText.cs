using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Cases;

/// <summary>What came of reading the text of a case.</summary>
/// <param name="Id">The id as far as it could be read; empty where it could not.</param>
/// <param name="Case">Null when anything in it is wrong: a case is run as it was meant, or not at all.</param>
/// <param name="Findings">Everything that is wrong, at once, in the order of the text; those of a table behind them.</param>
public sealed record CaseReading(string Id, PublishedCase? Case, IReadOnlyList<Finding> Findings)
{
    /// <summary>Every line was understood, though something may be wrong.</summary>
    public bool Understood => !Findings.Any(finding => finding.NotUnderstood);
}

/// <summary>Reads the text of a published case. The form is docs/evidence.md.</summary>
public static class CaseText
{
    internal const string IdKey = "case";
    internal const string TitleKey = "title";
    internal const string KindKey = "kind";
    internal const string SourceKey = "source";
    internal const string FittedKey = "fitted";
    internal const string NoteKey = "note";
    internal const string ConditionsKey = "conditions";
    internal const string MeasuredKey = "measured";

    private const int LongestId = 80;

    private static readonly string[] Keys = [FormLine.Key, IdKey, TitleKey, KindKey, SourceKey, FittedKey, NoteKey, ConditionsKey, MeasuredKey];

    /// <summary>Reads a text. Never throws for what a person wrote.</summary>
    /// <param name="beside">Gives the text of a table that lies beside the case, by its file name; null where there is none.</param>
    public static CaseReading Read(string text, Func<string, string?> beside)
    {
        var (document, log) = TreeReader.Read(text);
        if (document is null)
        {
            return new("", null, log.Findings);
        }

        if (!FormLine.Check(document, log))
        {
            return new("", null, [.. log.Findings.Where(finding => finding.Kind == FormFaults.FormNewer)]);
        }

        var root = new Section(document.Root, "", log, Keys);
        foreach (var key in (string[])[IdKey, TitleKey, KindKey, SourceKey, ConditionsKey, MeasuredKey])
        {
            if (!root.Has(key))
            {
                log.Wrong(CaseFaults.KeyMissing, "", new(1, 1), ("key", key));
            }
        }

        var id = ReadId(root);
        var tables = new List<Finding>();
        var read = ReadRest(root, id, new(beside, tables));
        Finding[] findings = [.. log.Findings, .. tables];
        return new(id, findings.Any(finding => finding.Grade == Grade.Error) ? null : read, findings);
    }

    private static PublishedCase? ReadRest(Section root, string id, CaseTables tables)
    {
        var log = root.Log;
        var source = root.Keys(SourceKey) is { } told ? SourceSection.Read(told, root.Entry(SourceKey)!.KeyPosition, log) : null;
        var fitted = root.Words(FittedKey)?.Word<Answer>();
        var title = root.Words(TitleKey)?.Text ?? "";
        var note = root.Prose(NoteKey);
        var conditions = root.Keys(ConditionsKey);
        var measured = root.Keys(MeasuredKey);
        if (root.Words(KindKey) is not { } word)
        {
            return null;
        }

        if (CaseKinds.Find(word.Text) is not { } kind)
        {
            // Without a kind nothing is known of the keys below.
            log.Fault(FormFaults.UnknownWord, word.Place, word.Position, TextForm.Phrase.UnknownWord(word.Text, [.. CaseKinds.All.Select(known => known.Name)]));
            return null;
        }

        var model = conditions is null ? null : kind.Read(new(new(conditions, ConditionsKey, log, kind.Keys), root.Entry(ConditionsKey)!.KeyPosition));
        var series = measured is null ? [] : SeriesSection.Read(measured, root.Entry(MeasuredKey)!.KeyPosition, kind, log, tables);
        return model is null || source is null ? null : new()
        {
            Id = id,
            Title = title,
            Kind = kind.Name,
            Source = source,
            Fitted = fitted == Answer.Yes,
            Note = note,
            Conditions = [.. conditions!.Entries.Select(Written)],
            Series = series,
            Model = model,
        };
    }

    /// <summary>A condition as it stands in the text; lines under a key are put one behind the other.</summary>
    private static CaseCondition Written(TextEntry entry) => new(entry.Key, entry.Value switch
    {
        TextMapping mapping => string.Join(", ", mapping.Entries.Select(line => line.Value is TextScalar scalar ? $"{line.Key} {scalar.Text}" : line.Key)),
        TextList list => string.Join(", ", list.Items.Select(item => item.Value.Text)),
        TextScalar scalar => scalar.Text,
        _ => "",
    });

    private static string ReadId(Section root)
    {
        if (root.Words(IdKey) is not { } words)
        {
            return "";
        }

        if (words.Text.Length is > 0 and <= LongestId && words.Text == Slug.Of(words.Text))
        {
            return words.Text;
        }

        words.Fault(CaseFaults.IdWrong, ("offer", Slug.Of(words.Text) is { Length: > 0 and <= LongestId } slug ? slug : "retard-ball-500g"));
        return "";
    }

    private enum Answer
    {
        No,
        Yes,
    }
}

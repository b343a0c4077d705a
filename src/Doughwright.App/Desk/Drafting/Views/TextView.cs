using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>The text beside the sheet.</summary>
/// <param name="Text">As it stands in its field.</param>
/// <param name="Lines">Numbers of its lines, and whether each is understood.</param>
/// <param name="Faults">Line and reason; empty when every line is understood.</param>
/// <param name="IsDraft">Whether it is not what the book holds.</param>
public sealed record TextView(string Text, IReadOnlyList<(int Number, bool IsFault)> Lines, IReadOnlyList<(string Line, string Words)> Faults, bool IsDraft)
{
    internal static TextView Of(Manuscript manuscript, Voice voice)
    {
        var text = (manuscript.Draft?.Text ?? manuscript.File.Text).Replace("\r\n", "\n");
        var faults = manuscript.Draft is not null ? manuscript.DraftFaults : [.. manuscript.File.Recipe is null ? manuscript.File.Findings : []];
        var at = faults.Select(fault => fault.Position.Line).ToHashSet();
        return new(
            text,
            [.. Enumerable.Range(1, text.Split('\n').Length).Select(number => (number, at.Contains(number)))],
            [.. faults.Select(fault => (fault.Position.IsKnown ? voice.Say("write.text-line", ("line", fault.Position.Line)) : "", $"{FindingWords.Message(fault, voice)} {FindingWords.WayOut(fault, voice)}".Trim()))],
            manuscript.Draft is not null);
    }
}

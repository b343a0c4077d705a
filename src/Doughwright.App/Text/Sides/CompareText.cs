using Doughwright.App.Commands;
using Doughwright.Engine.Sides;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text.Sides;

/// <summary>Two recipes side by side on a terminal: what differs, and what that does.</summary>
internal static class CompareText
{
    /// <param name="causes">What moved each figure; null where that is not asked for.</param>
    public static string Write(ComparedTexts compared, Causes? causes, Voice voice)
    {
        var page = new Page();
        var sides = new SideWords(compared.First, compared.Second, voice);
        page.Paragraph(voice.Say("sides.title", ("first", compared.FirstName), ("second", compared.SecondName)));
        page.Heading(voice.Words["sides.changed"]);
        if (compared.Differences.Count == 0)
        {
            page.Paragraph(voice.Words["sides.alike"], 2);
        }
        else
        {
            var table = TableOf(voice.Words["sides.head.what"], voice.Words["sides.head.by"], voice);
            foreach (var row in sides.Rows(compared.Differences))
            {
                table.Add(row.What, row.First.Line, row.Second.Line, row.By);
            }

            table.WriteTo(page);
        }

        var words = new ComesWords(compared.Consequences, voice, causes is null ? null : new(causes, sides, voice));
        page.Heading(voice.Say("sides.comes", ("kitchen", compared.KitchenName(voice))));
        var comes = TableOf(voice.Words["sides.head.figure"], voice.Words["sides.head.moves"], voice);
        var rows = words.Rows();
        foreach (var row in rows)
        {
            comes.Add(row.What, row.First.Line, row.Second.Line, row.IsSame ? voice.Words["sides.same"] : row.By);
        }

        comes.WriteTo(page);
        page.Gap();
        if (causes is not null)
        {
            page.Heading(voice.Words["sides.because-head"]);
            foreach (var row in rows.Where(row => row.Because.Words.Length > 0))
            {
                page.Paragraph(voice.Say("sides.because-row", ("what", row.What), ("by", row.By), ("because", row.Because.Words)), 2);
            }

            foreach (var note in words.NotesOfCauses(rows))
            {
                page.Paragraph(note);
            }
        }

        foreach (var note in words.Notes())
        {
            page.Paragraph(note);
        }

        page.Paragraph(voice.Words["sides.cue"]);
        return page.ToString();
    }

    private static Table TableOf(string what, string by, Voice voice) => new(
        new(what, Align.Left),
        new(voice.Words["sides.head.first"], Align.Left),
        new(voice.Words["sides.head.second"], Align.Left),
        new(by, Align.Left));
}

using Doughwright.App.Commands;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text.Sides;

/// <summary>Two recipes side by side on a terminal: what differs, and what that does.</summary>
internal static class CompareText
{
    public static string Write(ComparedTexts compared, Voice voice)
    {
        var page = new Page();
        page.Paragraph(voice.Say("sides.title", ("first", compared.FirstName), ("second", compared.SecondName)));
        page.Heading(voice.Words["sides.changed"]);
        if (compared.Differences.Count == 0)
        {
            page.Paragraph(voice.Words["sides.alike"], 2);
        }
        else
        {
            var table = TableOf(voice.Words["sides.head.what"], voice.Words["sides.head.by"], voice);
            foreach (var row in new SideWords(compared.First, compared.Second, voice).Rows(compared.Differences))
            {
                table.Add(row.What, row.First.Line, row.Second.Line, row.By);
            }

            table.WriteTo(page);
        }

        var words = new ComesWords(compared.Consequences, voice);
        page.Heading(voice.Say("sides.comes", ("kitchen", compared.KitchenName(voice))));
        var comes = TableOf(voice.Words["sides.head.figure"], voice.Words["sides.head.moves"], voice);
        foreach (var row in words.Rows())
        {
            comes.Add(row.What, row.First.Line, row.Second.Line, row.IsSame ? voice.Words["sides.same"] : row.By);
        }

        comes.WriteTo(page);
        page.Gap();
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

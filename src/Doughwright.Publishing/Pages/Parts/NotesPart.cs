using Doughwright.Publishing.Notes;
using Doughwright.Publishing.Pages.Markup;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Parts;

/// <summary>The teaching notes that the steps speak of, each once, after the recipe.</summary>
internal static class NotesPart
{
    public static void Write(Html page, PageContent content, Voice voice)
    {
        if (content.Notes.Count == 0)
        {
            return;
        }

        using (page.In("section", "sec notes", ("aria-labelledby", "notes")))
        {
            page.Put("h2", voice.Words["page.notes"], null, ("id", "notes"));
            foreach (var note in content.Notes)
            {
                using (page.In("article", "teach", ("id", note.Id)))
                {
                    page.Author("h3", note.Note.Title);
                    foreach (var block in note.Note.Blocks)
                    {
                        Block(page, block);
                    }
                }
            }
        }

        page.Line();
    }

    private static void Block(Html page, ToldBlock block)
    {
        switch (block)
        {
            case ToldBlock.Words words:
                using (page.In("p", null, ("dir", "auto")))
                {
                    foreach (var piece in words.Pieces)
                    {
                        Piece(page, piece);
                    }
                }

                break;
            case ToldBlock.Picture picture:
                using (page.In("figure"))
                {
                    foreach (var svg in picture.Svg)
                    {
                        page.Raw(Harmless.Clean(svg));
                    }

                    page.Put("figcaption", picture.Caption, "note");
                }

                break;
            case ToldBlock.Absent absent:
                page.Put("p", absent.Said, "note");
                break;
        }
    }

    private static void Piece(Html page, NotePiece piece) => _ = piece.Kind switch
    {
        NotePieceKind.Live => page.Author("b", piece.Text),
        NotePieceKind.Absent => page.Author("span", piece.Text, "nothere"),
        _ => page.Text(piece.Text),
    };
}

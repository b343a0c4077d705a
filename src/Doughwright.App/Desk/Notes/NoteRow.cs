using Doughwright.App.Desk.Recipes;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.Recipes.Notes;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Notes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Notes;

/// <summary>One note in the list, in finished words.</summary>
/// <param name="Begins">How it begins.</param>
/// <param name="Used">Which recipes link to it.</param>
internal sealed record NoteRow(string Name, string Title, string Begins, string Used, string Address)
{
    /// <summary>Letters of the first paragraph; what is longer is cut at a word.</summary>
    private const int Beginning = 160;

    public static IReadOnlyList<NoteRow> All(ShelfFolder shelf, Voice voice)
    {
        var uses = NoteUse.All(shelf);
        return
        [
            .. shelf.Book.Papers.Texts(PaperSort.Note).Select(note => Of(note.Name, NoteText.Read(note.Text).Note, [.. RecipeTitle.Apart(uses[note.Name].Select(use => (use.Recipe, use.Title)).Distinct(), voice).Values], voice))
                .OrderBy(row => row.Title, StringComparer.OrdinalIgnoreCase),
        ];
    }

    private static NoteRow Of(string name, Note? note, IReadOnlyList<string> recipes, Voice voice) => new(
        name,
        note is { Title.Length: > 0 } ? note.Title : name,
        note?.Blocks.OfType<NoteBlock.Words>().FirstOrDefault() is { } first ? Cut(NoteTeller.WithoutRecipe(first.Text, voice)) : "",
        recipes.Count == 0 ? voice.Words["notes.not-used"] : voice.Say("notes.used", ("recipes", recipes)),
        NoteAddress.Of(name));

    private static string Cut(string text)
    {
        if (text.Length <= Beginning)
        {
            return text;
        }

        var space = text.LastIndexOf(' ', Beginning);
        // A halved sign would be no sign at all.
        var at = space > 0 ? space : char.IsHighSurrogate(text[Beginning - 1]) ? Beginning - 1 : Beginning;
        return text[..at] + "…";
    }
}

using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Notes;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Notes;

namespace Doughwright.App.Commands;

/// <summary>The teaching notes of a book, for the recipes whose steps link to them.</summary>
/// <param name="names">Names of all notes.</param>
/// <param name="text">The text of the note of a name; null when there is none.</param>
internal sealed class BookNotes(Func<IReadOnlyList<string>> names, Func<string, string?> text)
{
    public static BookNotes Of(IReadOnlyList<(string Name, string Text)> all)
    {
        var byName = all.ToDictionary(note => note.Name, note => note.Text, StringComparer.Ordinal);
        return new(() => [.. byName.Keys], byName.GetValueOrDefault);
    }

    /// <summary>What a note is called in the book by the words of a link: "Dough temperature" is "dough-temperature".</summary>
    public static string NameOf(string link) => TextNames.Of(link, "");

    /// <summary>The notes that the steps of a recipe link to and that are there, in the order of the method.</summary>
    public IReadOnlyList<LinkedNote> LinkedFrom(Recipe recipe)
    {
        var read = new Dictionary<string, (bool IsThere, Note? Note)>(StringComparer.Ordinal);
        var linked = new List<LinkedNote>();
        foreach (var (step, link) in NoteLinks.Of(recipe))
        {
            var name = NameOf(link);
            if (!read.TryGetValue(name, out var known))
            {
                known = text(name) is { } found ? (true, NoteText.Read(found).Note) : (false, null);
                read.Add(name, known);
            }

            if (known.IsThere)
            {
                linked.Add(new(step.Id, name, known.Note));
            }
        }

        return linked;
    }

    /// <summary>Links to notes that the book does not have.</summary>
    public IReadOnlyList<Finding> Missing(Recipe recipe) => NoteLinks.Missing(recipe, link => text(NameOf(link)) is not null, names);
}

using Doughwright.App.Commands;
using Doughwright.App.Desk.Hosting;
using Doughwright.Book;
using Doughwright.Book.Papers;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The author's book on the desk: recipes, kitchens and own ingredients, each a text by its name.</summary>
internal sealed class ShelfFolder : IDisposable
{
    private const string NoteEnding = ".md";

    private ShelfFolder(DataFolder folder, AuthorsBook book, IReadOnlyList<ShelfText> notTaken)
    {
        (Folder, Book, NotTaken) = (folder, book, notTaken);
        RecipeTexts = new(book, PaperSort.Recipe);
        KitchenTexts = new(book, PaperSort.Kitchen);
        NoteTexts = new(book, PaperSort.Note);
        IngredientTexts = new(book, PaperSort.Ingredient);
    }

    public DataFolder Folder { get; }

    public AuthorsBook Book { get; }

    public BookTexts RecipeTexts { get; }

    public BookTexts KitchenTexts { get; }

    /// <summary>Teaching notes.</summary>
    public BookTexts NoteTexts { get; }

    /// <summary>The notes for the recipes that link to them, each as it is when it is asked for.</summary>
    public BookNotes Notes => new(NoteTexts.Names, name => Book.Papers.Text(PaperSort.Note, name));

    public BookTexts IngredientTexts { get; }

    /// <summary>What lay in the folder when the book was made just now, and could not be laid into it.</summary>
    public IReadOnlyList<ShelfText> NotTaken { get; }

    /// <summary>Names of the recipes, in order.</summary>
    public IReadOnlyList<string> Recipes => RecipeTexts.Names();

    public IReadOnlyList<string> Kitchens => KitchenTexts.Names();

    /// <summary>
    /// Opens the book of a folder to write in it. A book that is made just now gets the texts that lay in the folder before there were books, and
    /// where there are none the demo recipes, notes and kitchens.
    /// </summary>
    /// <exception cref="IOException">The folder or its book cannot be used.</exception>
    /// <exception cref="UnauthorizedAccessException">Like it.</exception>
    public static ShelfFolder Open(DataFolder folder, TimeProvider clock, Words words)
    {
        Directory.CreateDirectory(folder.Root);
        var book = AuthorsBook.Open(folder.Book, clock);
        try
        {
            var (recipes, kitchens) = (LaidTexts.Of(folder.Recipes, "recipes/"), LaidTexts.Of(folder.Kitchens, "kitchens/"));
            // The demo notes belong to the demo recipes: an author's own recipes link to none of them.
            var notes = Directory.Exists(folder.Recipes) ? [] : LaidTexts.Shipping("notes/", NoteEnding);
            var isNew = book.Papers.Fill(
                [
                    .. recipes.Texts.Select(text => (PaperSort.Recipe, text.Name, text.Text)),
                    .. kitchens.Texts.Select(text => (PaperSort.Kitchen, text.Name, text.Text)),
                    .. notes.Select(text => (PaperSort.Note, text.Name, text.Text)),
                ],
                words["book.laid"]);
            return new(folder, book, isNew ? [.. recipes.NotTaken, .. kitchens.NotTaken] : []);
        }
        catch
        {
            book.Dispose();
            throw;
        }
    }

    /// <summary>The bytes of a recipe; null when none has this name.</summary>
    public byte[]? Recipe(string name) => RecipeTexts.Read(name);

    public byte[]? Kitchen(string name) => KitchenTexts.Read(name);

    public void Dispose() => Book.Dispose();
}

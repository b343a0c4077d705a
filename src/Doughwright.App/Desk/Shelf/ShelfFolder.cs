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

    private ShelfFolder(DataFolder folder, AuthorsBook book, LeftTexts left)
    {
        (Folder, Book, Left) = (folder, book, left);
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

    /// <summary>What lay in the folder when the book was made, and could not be laid into it.</summary>
    public LeftTexts Left { get; }

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
            var left = new LeftTexts(folder);
            if (book.Size().Papers == 0)
            {
                var older = OlderFolder.Of(folder, words);
                // First what is left: nothing else would tell of it once the book is filled.
                left.Keep(left.WasKept ? older.Left.Where(text => left.Tells(text.File)) : older.Left);
                book.Papers.Fill([.. older.Papers, .. Shipped(folder, words["book.laid"])]);
            }

            return new(folder, book, left);
        }
        catch
        {
            book.Dispose();
            throw;
        }
    }

    /// <summary>The demo texts, where the folder has none of its own. The demo notes belong to the demo recipes: an author's own recipes link to none of them.</summary>
    private static IEnumerable<FirstPaper> Shipped(DataFolder folder, string did)
    {
        IEnumerable<FirstPaper> Without(string own, PaperSort sort, string shipped, string ending) => Directory.Exists(own)
            ? []
            : LaidTexts.Shipping(shipped, ending).Select(text => new FirstPaper(sort, text.Name, [new(text.Text, did)]));
        return
        [
            .. Without(folder.Recipes, PaperSort.Recipe, "recipes/", TextNames.Ending),
            .. Without(folder.Kitchens, PaperSort.Kitchen, "kitchens/", TextNames.Ending),
            .. Without(folder.Recipes, PaperSort.Note, "notes/", NoteEnding),
        ];
    }

    /// <summary>The bytes of a recipe; null when none has this name.</summary>
    public byte[]? Recipe(string name) => RecipeTexts.Read(name);

    public byte[]? Kitchen(string name) => KitchenTexts.Read(name);

    public void Dispose() => Book.Dispose();
}

using Doughwright.App.Desk.Hosting;
using Doughwright.App.Desk.Ingredients;
using Doughwright.Book;
using Doughwright.Book.Opening;
using Doughwright.Book.Papers;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Commands;

/// <summary>The ingredients of an author's own that a book holds, lots of flour among them.</summary>
/// <param name="Book">Its file; null where there is no book.</param>
internal sealed record OwnOfBook(string? Book, IReadOnlyList<OwnPaper> All)
{
    public static OwnOfBook None { get; } = new(null, []);

    /// <summary>Papers whose texts are not understood: nothing is known of what they are about.</summary>
    public IReadOnlyList<OwnPaper> NotUnderstood => [.. All.Where(paper => paper.Own is null)];

    /// <summary>From the book of the desk. Null with a fault when it is not there though it was named, or cannot be read.</summary>
    /// <param name="folder">Its folder; null for the user's, which need not have one.</param>
    public static OwnOfBook? Find(string? folder, Faults faults)
    {
        var path = (folder is null ? DataFolder.OfUser() : new(Path.GetFullPath(folder))).Book;
        if (folder is null && !File.Exists(path))
        {
            return None;
        }

        try
        {
            using var book = AuthorsBook.OpenToRead(path, TimeProvider.System);
            return new(path, [.. book.Papers.All(PaperSort.Ingredient).Select(paper => Read(paper, book))]);
        }
        catch (BookException problem)
        {
            BookFaults.Add(problem, faults);
            return null;
        }
    }

    /// <summary>A larder that knows them, too.</summary>
    public Larder Over(Larder larder) => larder.With(All.Select(paper => paper.Own?.Ingredient).OfType<Ingredient>());

    /// <summary>The paper that a row of the larder comes from; null for a row that comes with the program.</summary>
    public OwnPaper? PaperOf(Ingredient? row) => row is null ? null : All.FirstOrDefault(paper => ReferenceEquals(paper.Own?.Ingredient, row));

    private static OwnPaper Read(Paper paper, AuthorsBook book)
    {
        var text = book.Papers.TextOf(paper.State)!;
        return new(paper, text, IngredientText.Read(text));
    }
}

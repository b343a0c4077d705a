using Doughwright.Book;
using Doughwright.Engine.Recipes;

namespace Doughwright.App.Commands;

/// <summary>The photos that a recipe names, from the book that its text is in.</summary>
internal static class BookPhotos
{
    /// <summary>Bytes by name; nothing for a text that is in no book, and for what the book does not hold.</summary>
    /// <param name="file">What the text was called: a file, or a text of a book.</param>
    public static IReadOnlyDictionary<string, byte[]> Of(Recipe recipe, string file)
    {
        string[] names = [.. recipe.Photos.Concat(recipe.Steps.SelectMany(step => step.Photos)).Select(photo => photo.Name).Distinct()];
        if (names.Length == 0 || BookAddress.Read(file) is not { } address)
        {
            return new Dictionary<string, byte[]>();
        }

        using var book = AuthorsBook.OpenToRead(address.Book, TimeProvider.System);
        return names.Select(name => (Name: name, Photo: book.Photos.Find(name))).Where(one => one.Photo is not null).ToDictionary(one => one.Name, one => one.Photo!.Bytes);
    }
}

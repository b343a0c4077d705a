using Doughwright.App.Desk.Hosting;
using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Shelf;

/// <summary>Books that tests have open: a book is opened to write once, and a test and its desk share it.</summary>
internal static class Shelves
{
    private static readonly Lock Turn = new();
    private static readonly Dictionary<string, ShelfFolder> Opened = [];

    public static ShelfFolder At(DataFolder folder)
    {
        lock (Turn)
        {
            return Opened.TryGetValue(folder.Root, out var shelf) ? shelf : Opened[folder.Root] = ShelfFolder.Open(folder, TimeProvider.System, Words.Shipped);
        }
    }

    /// <summary>Closes the book and deletes its folder.</summary>
    public static void Remove(DataFolder folder)
    {
        Close(folder);
        Directory.Delete(folder.Root, recursive: true);
    }

    public static void Close(DataFolder folder)
    {
        lock (Turn)
        {
            if (Opened.Remove(folder.Root, out var shelf))
            {
                shelf.Dispose();
            }
        }
    }

    /// <summary>Lays a text under a name, or writes the one of that name down anew.</summary>
    public static void Put(BookTexts texts, string name, string text)
    {
        if (texts.Find(name) is { } there)
        {
            _ = texts.Write(name, there.State, text, "put by a test");
        }
        else
        {
            Assert.Equal(name, texts.Lay(name, text, "put by a test"));
        }
    }
}

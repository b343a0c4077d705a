using Dapper;
using Doughwright.App.Tests.Pictures;
using Doughwright.Book;
using Doughwright.Book.Papers;
using Doughwright.Publishing.Pictures.Photos;
using SkiaSharp;

namespace Doughwright.App.Tests.Book;

/// <summary>A book that holds something of everything, with words that are awkward to write down.</summary>
internal static class RichBook
{
    /// <summary>A photo as the desk lays them in.</summary>
    public static readonly byte[] Photo = PhotoFile.Read(PhotoSamples.Sample(SKEncodedImageFormat.Png), out _)!.Bytes;

    public static readonly string[] Awkward =
    [
        "=HYPERLINK(\"http://example.org\")", "+1", "-1", "@SUM(A1)", "\tindented", "'quoted", "''", "a,b", "say \"so\"", "two\nlines", "carriage\r\nreturn", "", "’n Brot – größer", "\u001b[31m",
    ];

    public static void Fill(AuthorsBook book)
    {
        TestBook.Fill(book, 6, "potato-rolls");
        var sort = PaperSort.Recipe;
        var papers = book.Papers;
        var state = papers.Find(sort, "potato-rolls")!.State;
        foreach (var words in Awkward)
        {
            Assert.NotNull(book.Kept.Keep(sort, "potato-rolls", state, words, words, published: words.Length == 0));
            state = Assert.IsType<WriteAnswer.Written>(papers.Write(sort, "potato-rolls", state, words, words)).State;
            Assert.True(book.Said.Say(sort, "potato-rolls", Saying.Family, words));
        }

        // A text that was there before comes again.
        state = Assert.IsType<WriteAnswer.Written>(papers.Write(sort, "potato-rolls", state, "a,b", "again")).State;
        state = Assert.IsType<WriteAnswer.Written>(papers.Undo(sort, "potato-rolls", state)).State;
        state = Assert.IsType<WriteAnswer.Written>(papers.Undo(sort, "potato-rolls", state)).State;
        papers.Lay(sort, ["CON"], "a device by name", "laid", state);
        papers.Lay(sort, ["con"], "and again", "laid", state);
        papers.Lay(sort, ["größer, schöner"], "ü", "laid");
        papers.Lay(PaperSort.Kitchen, ["cottage"], "kitchen: 1\n", "laid");
        papers.TakeAway(PaperSort.Kitchen, "cottage");
        papers.Lay(PaperSort.Note, ["scalding"], "# Scalding\n", "laid");
        papers.Lay(PaperSort.Ingredient, ["harbour-flour"], "ingredient: 1\n", "laid");
        book.Opened.Write(open =>
        {
            var hash = Photos.HashOf(Photo);
            open.Execute("INSERT INTO photo VALUES (@hash, 'image/jpeg', @Photo)", new { hash, Photo });
            open.Execute("INSERT INTO photo_of SELECT id, @hash, '2026-11-26T12:00:00.000Z', '=crust' FROM paper WHERE name = 'potato-rolls'", new { hash });
            open.Execute("INSERT INTO correction (kept, at, text, place, done) VALUES (1, '2026-11-26T12:00:00.000Z', '-5 g', '@page', '2026-11-26'), (1, '2026-11-26T12:00:00.000Z', 'x', 'y', NULL)");
            return 0;
        });
        Assert.Empty(book.Verify());
    }
}

using System.Globalization;
using Doughwright.Book;
using Doughwright.Book.Papers;

namespace Doughwright.BookWriter;

/// <summary>Writes and copies in turn, the copy always to the same name.</summary>
internal static class CopyLoad
{
    public static void Run(string path, string to, TextWriter told)
    {
        using var book = AuthorsBook.Open(path, TimeProvider.System);
        var paper = book.Papers.All(PaperSort.Recipe)[0];
        var state = paper.State;
        told.WriteLine("open");
        for (var number = 0; ; number++)
        {
            var written = (WriteAnswer.Written)book.Papers.Write(PaperSort.Recipe, paper.Name, state, string.Create(CultureInfo.InvariantCulture, $"text {number}"), "changed");
            state = written.State;
            told.WriteLine(string.Create(CultureInfo.InvariantCulture, $"now {paper.Name} {state} {written.Hash}"));
            book.CopyTo(to);
            told.WriteLine(string.Create(CultureInfo.InvariantCulture, $"copied {paper.Name} {state} {written.Hash}"));
        }
    }
}

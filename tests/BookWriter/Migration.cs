using Doughwright.Book;
using Doughwright.Book.Schema;

namespace Doughwright.BookWriter;

/// <summary>Brings a book forward to a form that was never released: one that touches every row.</summary>
internal static class Migration
{
    private const string Step = """
        ALTER TABLE state ADD COLUMN letters INTEGER;
        UPDATE state SET letters = (SELECT length(text) FROM body WHERE body.hash = state.hash);
        CREATE TABLE word (state INTEGER NOT NULL REFERENCES state(id), word TEXT NOT NULL) STRICT;
        INSERT INTO word (state, word) SELECT id, did FROM state;
        CREATE INDEX word_of_state ON word(state);
        """;

    public static readonly Forms Forms = new([.. Forms.Shipped.Steps, Step]);

    public static void Run(string path, TextWriter told)
    {
        told.WriteLine("opening");
        using var book = AuthorsBook.Open(path, TimeProvider.System, Forms);
        told.WriteLine("done");
        Thread.Sleep(Timeout.Infinite);
    }
}

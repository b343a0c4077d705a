using Dapper;
using Doughwright.Book.Exchange;
using Doughwright.Book.Opening;

namespace Doughwright.Book.Papers;

/// <summary>A photo as the book keeps it.</summary>
/// <param name="Hash">SHA-256 of its bytes, in small hexadecimal digits.</param>
/// <param name="Type">image/jpeg, image/png or image/webp.</param>
public sealed record KeptPhoto(string Hash, string Type, byte[] Bytes);

/// <summary>The photos of a book. Each is there once, by the hash of its bytes, and is never let go: an earlier state may name it.</summary>
public sealed class PhotoStore
{
    private readonly BookFile file;
    private readonly TimeProvider clock;

    internal PhotoStore(BookFile file, TimeProvider clock) => (this.file, this.clock) = (file, clock);

    /// <summary>Lays a photo in, for a paper.</summary>
    /// <param name="type">image/jpeg, image/png or image/webp.</param>
    /// <param name="words">What is to be seen on it.</param>
    /// <returns>Its hash; null when there is no such paper.</returns>
    /// <exception cref="ArgumentException">The bytes do not begin as a photo of this type does.</exception>
    public string? Lay(PaperSort sort, string paper, string type, byte[] bytes, string words)
    {
        if (!PhotoBytes.AreOf(type, bytes))
        {
            throw new ArgumentException($"The bytes are no {type}.", nameof(bytes));
        }

        var hash = Photos.HashOf(bytes);
        return file.Write(open =>
        {
            open.Execute("INSERT INTO photo (hash, type, bytes) VALUES (@hash, @type, @bytes) ON CONFLICT DO NOTHING", new { hash, type, bytes });
            var laid = open.Execute(
                """
                INSERT INTO photo_of (paper, hash, at, words) SELECT id, @hash, @at, @words FROM paper WHERE sort = @sort AND name = @paper
                ON CONFLICT (paper, hash) DO UPDATE SET words = excluded.words
                """,
                new { hash, at = Instants.Write(clock.GetUtcNow()), words, sort = PaperStore.Word(sort), paper });
            return laid == 1 ? hash : null;
        });
    }

    /// <summary>Whether there is one photo whose hash begins so.</summary>
    public bool Holds(string begins) => begins.Length > 0 && begins.All(char.IsAsciiHexDigitLower)
        && file.Use(open => open.ExecuteScalar<int>("SELECT count(*) FROM photo WHERE hash >= @begins AND hash < @after", new { begins, after = begins + "g" })) == 1;

    /// <summary>A photo by the first digits of its hash; null when none begins so, or several do.</summary>
    public KeptPhoto? Find(string begins) => begins.Length == 0 || !begins.All(char.IsAsciiHexDigitLower) ? null : file.Use(open =>
        open.Query<KeptPhoto>("SELECT hash AS Hash, type AS Type, bytes AS Bytes FROM photo WHERE hash >= @begins AND hash < @after LIMIT 2", new { begins, after = begins + "g" })
            .ToArray() is [var only] ? only : null);
}

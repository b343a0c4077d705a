using System.Globalization;
using Dapper;
using Doughwright.Book;
using Doughwright.Book.Opening;
using Doughwright.Book.Papers;
using Doughwright.Book.Safety;
using Doughwright.BookWriter;

namespace Doughwright.App.Tests.Book;

/// <summary>A program that writes a book is ended by force at moments that a number decides. What it was told to be done is there, and the book agrees with itself.</summary>
public sealed class KillTests(ITestOutputHelper output) : IDisposable
{
    private const int RoundsOfOneBook = 20;

    private static readonly TimeSpan WriteSpan = TimeSpan.FromMilliseconds(250);
    private static readonly TimeSpan CopySpan = TimeSpan.FromMilliseconds(700);

    private readonly TestBook book = new();

    public void Dispose() => book.Dispose();

    [Fact]
    [Trait("Category", "Slow")]
    public void InWrites_NothingAcknowledgedIsLost() => Writes(12, 1);

    [Fact]
    [Trait("Category", "Slow")]
    public void InMigrations_TheBookIsInOneFormOrTheNext() => Migrations(4, 2);

    [Fact]
    [Trait("Category", "Slow")]
    public void InCopies_ACopyIsWholeOrNotThere() => Copying(4, 3);

    [Fact(Explicit = true)]
    [Trait("Category", "Long")]
    public void FiveHundredTimesInWrites_NothingAcknowledgedIsLost() => Writes(500, 4);

    [Fact(Explicit = true)]
    [Trait("Category", "Long")]
    public void FiftyTimesInMigrations_TheBookIsInOneFormOrTheNext() => Migrations(50, 5);

    [Fact(Explicit = true)]
    [Trait("Category", "Long")]
    public void FiftyTimesInCopies_ACopyIsWholeOrNotThere() => Copying(50, 6);

    /// <summary>The same book falls again and again, and nobody mends it between: what is looked at is a copy of how it lies.</summary>
    private void Writes(int rounds, int draw)
    {
        var random = new Random(draw);
        var (acknowledged, ahead, before) = (0, 0, Counts.None);
        List<string> kinds = [];
        for (var round = 0; round < rounds; round++)
        {
            var path = book.In(string.Create(CultureInfo.InvariantCulture, $"book-{round / RoundsOfOneBook}.db"));
            before = round % RoundsOfOneBook == 0 ? Counts.None : before;
            var run = EndedByForce.Run(EndedByForce.Moment(random, WriteSpan), null, "write", path, random.Next().ToString(CultureInfo.InvariantCulture));
            var lies = book.In(string.Create(CultureInfo.InvariantCulture, $"lies-{round}.db"));
            foreach (var part in new[] { "", "-wal", "-shm" }.Where(part => File.Exists(path + part)))
            {
                File.Copy(path + part, lies + part);
            }

            using (var fallen = AuthorsBook.Open(lies, book.Clock))
            {
                Assert.Empty(fallen.Verify());
                var now = Counts.Of(fallen);
                ahead += Counts.Ahead(before, now, run.Told);
                WhatWasTold.IsThere(fallen, run.Told);
                kinds.AddRange(run.Told.Select(line => line.What));
                (acknowledged, before) = (acknowledged + run.Told.Count, now);
            }

            File.Delete(lies);
        }

        output.WriteLine($"Ended by force {rounds} times while writing: {acknowledged} acknowledged, all there; {ahead} done and not yet acknowledged. "
            + string.Join(", ", kinds.CountBy(kind => kind).OrderByDescending(kind => kind.Value).Select(kind => $"{kind.Key} {kind.Value}")));
        Assert.True(acknowledged > rounds, "Hardly anything was written.");
    }

    private void Migrations(int rounds, int draw)
    {
        var pattern = book.In("pattern.db");
        using (var old = book.Open())
        {
            TestBook.Fill(old, 1500, letters: 1500);
            old.CopyTo(pattern);
        }

        var random = new Random(draw);
        var whole = EndedByForce.Run(TimeSpan.FromMinutes(1), "done", "migrate", Laid(pattern, "whole")).Lived;
        var forms = new int[Migration.Forms.Now + 1];
        for (var round = 0; round < rounds; round++)
        {
            var path = Laid(pattern, string.Create(CultureInfo.InvariantCulture, $"migration-{round}"));
            var run = EndedByForce.Run(EndedByForce.Moment(random, whole * 1.1), null, "migrate", path);
            int form;
            using (var fallen = BookFile.OpenToCopy(path, Migration.Forms))
            {
                Assert.Empty(Verifier.Verify(fallen));
                form = fallen.Use(open => open.ExecuteScalar<int>("PRAGMA user_version"));
                Assert.Equal(1501, fallen.Use(open => open.ExecuteScalar<int>("SELECT count(*) FROM state")));
            }

            Assert.True(run.Told.Count == 0 || form == Migration.Forms.Now, "It was told to be brought forward and is not.");
            Assert.True(form < Migration.Forms.Now || AuthorsBook.CopiesOf(path).Count > 0, "It was brought forward without a copy.");
            Assert.All(AuthorsBook.CopiesOf(path), copy => Assert.Empty(AuthorsBook.Examine(copy.Path)));
            using (var again = AuthorsBook.Open(path, book.Clock, Migration.Forms))
            {
                Assert.Empty(again.Verify());
                Assert.Equal(TestBook.TextOf(1500, 1500), again.Papers.Text(PaperSort.Recipe, "rolls"));
                Assert.Equal((0, 1501), again.Opened.Use(open => (open.ExecuteScalar<int>("SELECT count(*) FROM state WHERE letters IS NULL"), open.ExecuteScalar<int>("SELECT count(*) FROM word"))));
            }

            forms[form]++;
            Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
        }

        output.WriteLine($"Ended by force {rounds} times within {whole.TotalMilliseconds * 1.1:0} ms of a migration: {forms[^2]} in the old form, {forms[^1]} in the new one, all whole.");
    }

    private void Copying(int rounds, int draw)
    {
        var pattern = book.In("pattern.db");
        using (var old = book.Open())
        {
            TestBook.Fill(old, 1500, letters: 1500);
            old.CopyTo(pattern);
        }

        var random = new Random(draw);
        var (copied, torn) = (0, 0);
        for (var round = 0; round < rounds; round++)
        {
            var path = Laid(pattern, string.Create(CultureInfo.InvariantCulture, $"copies-{round}"));
            var to = Path.Join(Path.GetDirectoryName(path), "copy.db");
            var run = EndedByForce.Run(EndedByForce.Moment(random, CopySpan), null, "copy", path, to);
            using (var fallen = AuthorsBook.Open(path, book.Clock))
            {
                Assert.Empty(fallen.Verify());
                WhatWasTold.IsThere(fallen, run.Told);
            }

            var told = run.Told.LastOrDefault(line => line.What == "copied");
            Assert.True(told is null || File.Exists(to));
            if (File.Exists(to))
            {
                Assert.Empty(AuthorsBook.Examine(to));
                using var copy = AuthorsBook.OpenToRead(to, book.Clock);
                Assert.True(copy.Papers.Find(PaperSort.Recipe, "rolls")!.State >= (told?.Number ?? 0));
                copied++;
            }

            torn += Directory.EnumerateFiles(Path.GetDirectoryName(path)!, "*.unfinished").Count();
            Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
        }

        output.WriteLine($"Ended by force {rounds} times while copying: {copied} with a copy, all whole; {torn} copies begun and left under a name of their own.");
    }

    private string Laid(string pattern, string name)
    {
        var folder = Directory.CreateDirectory(book.In(name)).FullName;
        File.Copy(pattern, Path.Join(folder, "book.db"));
        return Path.Join(folder, "book.db");
    }
}

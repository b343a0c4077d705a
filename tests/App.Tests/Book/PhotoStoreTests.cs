using Doughwright.App.Commands;
using Doughwright.Book;
using Doughwright.Book.Papers;

namespace Doughwright.App.Tests.Book;

/// <summary>A photo is in the book once, is found by what a text calls it, and goes out and comes back with the book.</summary>
public sealed class PhotoStoreTests : IDisposable
{
    private const string Type = "image/jpeg";

    private readonly TestBook book = new();

    public void Dispose() => book.Dispose();

    /// <summary>It begins as a photo does; the store looks no further.</summary>
    private static byte[] Photo(byte last) => [0xff, 0xd8, 0xff, 0xe0, 1, 2, 3, last];

    [Fact]
    public void Photo_IsThereOnce_AndFoundByTheFirstDigitsOfItsHash()
    {
        using var open = book.Open();
        TestBook.Fill(open, 1);
        var hash = open.Photos.Lay(PaperSort.Recipe, "rolls", Type, Photo(1), "the crumb")!;
        Assert.Equal(hash, open.Photos.Lay(PaperSort.Recipe, "rolls", Type, Photo(1), "the crumb, cut open"));
        Assert.Equal(1, open.Size().Photos);
        var found = open.Photos.Find(hash[..16])!;
        Assert.Equal((hash, Type), (found.Hash, found.Type));
        Assert.Equal(Photo(1), found.Bytes);
        Assert.True(open.Photos.Holds(hash[..16]));
        Assert.Empty(open.Verify());
    }

    [Theory]
    [InlineData("")]
    [InlineData("%")]
    [InlineData("_")]
    [InlineData("' OR 1=1 --")]
    [InlineData("0000000000000000")]
    public void WhatIsNoBeginningOfAHash_FindsNothing(string name)
    {
        using var open = book.Open();
        TestBook.Fill(open, 1);
        open.Photos.Lay(PaperSort.Recipe, "rolls", Type, Photo(1), "the crumb");
        Assert.Null(open.Photos.Find(name));
        Assert.False(open.Photos.Holds(name));
    }

    [Fact]
    public void BeginningOfTwo_FindsNeither()
    {
        using var open = book.Open();
        TestBook.Fill(open, 1);
        // Seventeen photos share a first digit for certain.
        string[] hashes = [.. Enumerable.Range(0, 17).Select(i => open.Photos.Lay(PaperSort.Recipe, "rolls", Type, Photo((byte)i), "one of many")!)];
        var shared = hashes.GroupBy(hash => hash[0]).First(group => group.Count() > 1).Key;
        Assert.Null(open.Photos.Find(shared.ToString()));
        Assert.All(hashes, hash => Assert.NotNull(open.Photos.Find(hash[..16])));
    }

    [Fact]
    public void OtherBytes_AreRefused_AndSoIsAPaperThatIsNotThere()
    {
        using var open = book.Open();
        TestBook.Fill(open, 1);
        Assert.Throws<ArgumentException>(() => open.Photos.Lay(PaperSort.Recipe, "rolls", "image/svg+xml", "<svg/>"u8.ToArray(), "a drawing"));
        Assert.Throws<ArgumentException>(() => open.Photos.Lay(PaperSort.Recipe, "rolls", "image/png", Photo(1), "a photo"));
        Assert.Null(open.Photos.Lay(PaperSort.Recipe, "nothing", Type, Photo(1), "the crumb"));
    }

    [Fact]
    public void Photo_GoesOutAndComesBack_WithItsWords()
    {
        using var first = book.Open();
        TestBook.Fill(first, 1);
        var hash = first.Photos.Lay(PaperSort.Recipe, "rolls", Type, RichBook.Photo, "=the crumb")!;
        first.Export(book.In("out"));
        using var second = AuthorsBook.Open(book.In("second.db"), book.Clock);
        Assert.True(second.Import(book.In("out"), ImportedPhotos.Look).Done);
        Assert.Equal(RichBook.Photo, second.Photos.Find(hash)!.Bytes);
        second.Export(book.In("again"));
        Assert.Equal(File.ReadAllBytes(book.In("out", "photos-of.csv")), File.ReadAllBytes(book.In("again", "photos-of.csv")));
    }
}

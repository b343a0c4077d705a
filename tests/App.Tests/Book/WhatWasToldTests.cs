using Doughwright.Book.Papers;
using Xunit.Sdk;

namespace Doughwright.App.Tests.Book;

/// <summary>What looks for acknowledged things in a book that fell sees each kind of them that is not there.</summary>
public sealed class WhatWasToldTests : IDisposable
{
    private readonly TestBook book = new();

    public void Dispose() => book.Dispose();

    [Theory]
    [InlineData("now")]
    [InlineData("kept")]
    [InlineData("published")]
    [InlineData("photo")]
    [InlineData("correction")]
    [InlineData("made")]
    public void OneThatIsMissing_IsSeen(string what)
    {
        using var open = book.Open();
        TestBook.Fill(open, 2);
        var kept = open.Kept.Keep(PaperSort.Recipe, "rolls", 3, "given out", "", published: true, "published")!;
        Assert.True(open.Corrections.Add(kept.Id, "sign", "page"));
        var hash = open.Photos.Lay(PaperSort.Recipe, "rolls", "image/jpeg", RichBook.Photo, "x")!;
        WhatWasTold.IsThere(open, [new("published", "rolls", kept.Id, kept.Hash), new("correction", "rolls", kept.Id, "sign"), new("photo", "rolls", 0, hash)]);

        Acknowledged missing = what switch
        {
            "photo" => new(what, "rolls", 0, new string('0', 64)),
            // One that waits is there, and not made.
            "made" => new(what, "rolls", 1, ""),
            _ => new(what, "rolls", what == "kept" ? kept.Id : 77, what == "correction" ? "sign" : kept.Hash),
        };
        Assert.ThrowsAny<Exception>(() => WhatWasTold.IsThere(open, [missing]));
    }

    /// <summary>One paper may be ahead of what was said, the one that was being moved; two may not.</summary>
    [Fact]
    public void PapersThatAreNotWhereTheyWereSaidToBe_AreSeen()
    {
        using var open = book.Open();
        TestBook.Fill(open, 0, "rolls");
        TestBook.Fill(open, 0, "loaf");
        WhatWasTold.IsThere(open, [new("away", "rolls", 0, "")]);
        Assert.ThrowsAny<XunitException>(() => WhatWasTold.IsThere(open, [new("away", "rolls", 0, ""), new("away", "loaf", 0, "")]));
        Assert.True(open.Papers.TakeAway(PaperSort.Recipe, "rolls"));
        WhatWasTold.IsThere(open, [new("away", "rolls", 0, ""), new("away", "loaf", 0, "")]);
    }
}

using System.IO.Compression;
using Doughwright.Book;
using Doughwright.Book.Exchange;
using Doughwright.Book.Opening;

namespace Doughwright.App.Tests.Book;

/// <summary>How many files an archive has is told before any of it is opened, and an export never makes one that would not be taken in again.</summary>
public sealed class ArchiveCountTests : IDisposable
{
    private readonly TestBook book = new();

    public void Dispose() => book.Dispose();

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(300)]
    public void Entries_AreCountedToTheLast(int entries)
    {
        using var archive = Archive(entries);
        Assert.True(ArchiveCount.IsAbove(archive, entries - 1));
        Assert.False(ArchiveCount.IsAbove(archive, entries));
        Assert.False(ArchiveCount.IsAbove(archive, entries + 1));
        Assert.Equal(0, archive.Position);
    }

    /// <summary>With so many the library writes the longer form, whose directory is found by another way.</summary>
    [Fact]
    public void EntriesOfALargeArchive_AreCountedToTheLast()
    {
        using var archive = Archive(ushort.MaxValue + 1);
        Assert.True(ArchiveCount.IsAbove(archive, ushort.MaxValue));
        Assert.False(ArchiveCount.IsAbove(archive, ushort.MaxValue + 1));
    }

    [Fact]
    public void RemarkAtTheEnd_HidesNothing()
    {
        using var archive = Archive(4, new string('x', 40_000));
        Assert.True(ArchiveCount.IsAbove(archive, 3));
        Assert.False(ArchiveCount.IsAbove(archive, 4));
    }

    [Theory]
    [InlineData("")]
    [InlineData("PK")]
    [InlineData("no archive, and long enough to be looked through for one")]
    public void WhatIsNoArchive_HasNone(string text)
    {
        using var stream = new MemoryStream(System.Text.Encoding.UTF8.GetBytes(text));
        Assert.False(ArchiveCount.IsAbove(stream, 0));
    }

    /// <summary>As many as are taken in are written; with one more nothing is, and what it would be is told.</summary>
    [Fact]
    public void ArchiveOfMoreFilesThanAreTakenIn_IsNotWritten()
    {
        using var open = book.Open();
        RichBook.Fill(open);
        var files = Files(open, "all.zip", Guard.MostFiles);
        Assert.Equal(files, Files(open, "most.zip", files));
        var before = Directory.GetFileSystemEntries(book.Folder);
        var problem = Assert.Throws<BookException>(() => Exporting.Write(open.Opened, book.In("more.zip"), files - 1));
        Assert.Equal((BookTrouble.TooMany, book.In("more.zip"), $"{files}"), (problem.Trouble, problem.Path, problem.Message));
        Assert.Equal(before, Directory.GetFileSystemEntries(book.Folder));
        // A folder has no such bound.
        Exporting.Write(open.Opened, book.In("folder"), 1);
        Assert.Equal(files, Directory.GetFiles(book.In("folder"), "*", SearchOption.AllDirectories).Length);
    }

    private int Files(AuthorsBook open, string name, int most)
    {
        Exporting.Write(open.Opened, book.In(name), most);
        using var archive = ZipFile.OpenRead(book.In(name));
        return archive.Entries.Count;
    }

    private static MemoryStream Archive(int entries, string remark = "")
    {
        var stream = new MemoryStream();
        using (var archive = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            archive.Comment = remark;
            for (var number = 0; number < entries; number++)
            {
                archive.CreateEntry($"{number}");
            }
        }

        return stream;
    }
}

using System.IO.Compression;
using Doughwright.Book.Opening;

namespace Doughwright.Book.Exchange;

/// <summary>A file of an export that is to be taken in.</summary>
/// <param name="Name">As it stands there, with slashes.</param>
/// <param name="Length">Bytes that it says it has.</param>
/// <param name="Packed">Bytes that it takes; as many for a file in a folder.</param>
internal sealed record SourceFile(string Name, long Length, long Packed, bool IsLink, Func<Stream> Open);

/// <summary>An export as it lies there: a folder or an archive.</summary>
internal sealed class Source : IDisposable
{
    /// <summary>Kind of file in what other systems note of an archive's entry.</summary>
    private const int KindShift = 16;
    private const int KindMask = 0xF000;
    private const int Link = 0xA000;

    private readonly IDisposable? held;

    private Source(string path, IReadOnlyList<SourceFile> files, long packed, bool isArchive, IDisposable? held = null) =>
        (Path, Files, Packed, IsArchive, this.held) = (path, files, packed, isArchive, held);

    public string Path { get; }

    public IReadOnlyList<SourceFile> Files { get; }

    /// <summary>Bytes of all of it.</summary>
    public long Packed { get; }

    public bool IsArchive { get; }

    /// <returns>Null with a fault when it is neither, or cannot be taken.</returns>
    public static Source? Of(string path, ExchangeFaults faults)
    {
        try
        {
            return Directory.Exists(path) ? OfFolder(path) : OfArchive(path, faults);
        }
        catch (InvalidDataException)
        {
            faults.Add("import-no-archive", ("file", path));
            return null;
        }
        catch (Exception problem) when (BookException.Of(problem, path) is { } told)
        {
            faults.Add(told.Trouble == BookTrouble.Missing ? "import-missing" : "import-unreadable", ("file", path));
            return null;
        }
    }

    public void Dispose() => held?.Dispose();

    /// <returns>Null with a fault when more files are in it than are taken in.</returns>
    private static Source? OfArchive(string path, ExchangeFaults faults)
    {
        var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read);
        if (ArchiveCount.IsAbove(file, Guard.MostFiles))
        {
            file.Dispose();
            faults.Add("import-too-many", ("most", Guard.MostFiles));
            return null;
        }

        var archive = new ZipArchive(file, ZipArchiveMode.Read);
        var files = archive.Entries.Select(entry => new SourceFile(
            entry.FullName, entry.Length, entry.CompressedLength, ((entry.ExternalAttributes >> KindShift) & KindMask) == Link, entry.Open));
        return new(path, [.. files], new FileInfo(path).Length, isArchive: true, archive);
    }

    private static Source OfFolder(string path)
    {
        var files = Walk(new(path), "").OrderBy(file => file.Name, StringComparer.Ordinal).ToArray();
        return new(path, files, files.Sum(file => file.Packed), isArchive: false);
    }

    /// <summary>Links are listed and never followed.</summary>
    private static IEnumerable<SourceFile> Walk(DirectoryInfo folder, string within)
    {
        foreach (var one in folder.EnumerateFileSystemInfos())
        {
            var name = within + one.Name;
            if (one.LinkTarget is not null)
            {
                yield return new(name, 0, 0, IsLink: true, () => Stream.Null);
            }
            else if (one is FileInfo file)
            {
                yield return new(name, file.Length, file.Length, IsLink: false, file.OpenRead);
            }
            else
            {
                foreach (var inner in Walk((DirectoryInfo)one, name + "/"))
                {
                    yield return inner;
                }
            }
        }
    }
}

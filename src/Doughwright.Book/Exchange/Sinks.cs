using System.IO.Compression;

namespace Doughwright.Book.Exchange;

/// <summary>Takes the files of an export.</summary>
internal interface ISink : IDisposable
{
    void Write(string name, Action<Stream> content);
}

internal sealed class FolderSink(string folder) : ISink
{
    public void Write(string name, Action<Stream> content)
    {
        var path = Path.Join(folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
        content(stream);
        stream.Flush(flushToDisk: true);
    }

    public void Dispose()
    {
    }
}

internal sealed class ArchiveSink(string file) : ISink
{
    /// <summary>The same book gives the same bytes on every day: archives have no year before this one.</summary>
    private static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private readonly ZipArchive archive = new(new FileStream(file, FileMode.CreateNew, FileAccess.ReadWrite), ZipArchiveMode.Create);

    public void Write(string name, Action<Stream> content)
    {
        var entry = archive.CreateEntry(name, CompressionLevel.Optimal);
        entry.LastWriteTime = NoTime;
        using var stream = entry.Open();
        content(stream);
    }

    public void Dispose() => archive.Dispose();
}

namespace Doughwright.App.Desk.Shelf;

/// <summary>A folder with texts of one sort. Whatever else lies in it, reading it does not fail on that.</summary>
/// <param name="ending">Of the texts' names.</param>
internal sealed class TextFolder(string path, string ending = TextNames.Ending)
{
    /// <summary>Bytes of the largest text that is read or laid down: 1 MiB.</summary>
    public const int LargestText = 1024 * 1024;

    private static readonly EnumerationOptions Everything = new() { AttributesToSkip = 0, MatchType = MatchType.Simple };

    public string Path => path;

    /// <summary>Everything that is named like a text, in the order of names.</summary>
    /// <exception cref="IOException">The folder cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">Like it.</exception>
    public IReadOnlyList<ShelfText> Texts() => Directory.Exists(path)
        ? [.. new DirectoryInfo(path).EnumerateFileSystemInfos("*" + ending, Everything).Select(Look).OrderBy(text => text.Name, StringComparer.Ordinal)]
        : [];

    /// <summary>Names of what can be read; none when the folder itself cannot.</summary>
    public IReadOnlyList<string> Names()
    {
        try
        {
            return [.. Texts().Where(text => text.Trouble is null).Select(text => text.Name)];
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>The bytes of a text; null when none that can be read has this name. Only names that lie in the folder are looked at, so no name leads out of it.</summary>
    public byte[]? Read(string name) => Names().Contains(name, StringComparer.Ordinal) ? ReadFile(FileOf(name)) : null;

    /// <summary>The bytes of a text that was listed; null when it cannot be read.</summary>
    public byte[]? Read(ShelfText listed) => listed.Trouble is null ? ReadFile(FileOf(listed.Name)) : null;

    /// <summary>The file of a name that came from this folder.</summary>
    public string FileOf(string name) => System.IO.Path.Join(path, name + ending);

    private ShelfText Look(FileSystemInfo file)
    {
        var name = file.Name[..^ending.Length];
        return new(name, TroubleOf(file, name));
    }

    private static TextTrouble? TroubleOf(FileSystemInfo file, string name)
    {
        try
        {
            return !TextNames.FitsAddress(name) ? TextTrouble.Name
                : file.LinkTarget is not null ? TextTrouble.Link
                : file is not FileInfo text ? TextTrouble.Folder
                : text.Length > LargestText ? TextTrouble.TooLarge
                : null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return TextTrouble.Unreadable;
        }
    }

    /// <summary>Null when it cannot be read, or grew too large.</summary>
    private static byte[]? ReadFile(string file)
    {
        try
        {
            // What has no length is empty, or a pipe that would keep its reader waiting.
            if (new FileInfo(file).Length == 0)
            {
                return [];
            }

            using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            var bytes = new byte[LargestText + 1];
            var read = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return read > LargestText ? null : bytes[..read];
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}

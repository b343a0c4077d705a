namespace Doughwright.App.Desk.Shelf;

/// <summary>Lays a new text into a folder: never over another, and never half of it.</summary>
internal static class LaidText
{
    private const string Unfinished = ".unfinished";
    private static readonly Lock Turn = new();

    /// <summary>The name under which these bytes lie now; one that has them already is named and not written again.</summary>
    /// <param name="wanted">A name made by <see cref="TextNames.Of"/>.</param>
    /// <exception cref="IOException">It cannot be written: the disk is full, or the folder is not to be written to.</exception>
    /// <exception cref="UnauthorizedAccessException">Like it.</exception>
    public static string Lay(TextFolder folder, string wanted, byte[] bytes)
    {
        // Two forms sent at once must not both find that a text is not there yet.
        lock (Turn)
        {
            return Same(folder, bytes) ?? LayNew(folder, wanted, bytes);
        }
    }

    private static string? Same(TextFolder folder, byte[] bytes) =>
        folder.Texts().FirstOrDefault(text => folder.Read(text) is { } there && there.AsSpan().SequenceEqual(bytes))?.Name;

    private static string LayNew(TextFolder folder, string wanted, byte[] bytes)
    {
        Directory.CreateDirectory(folder.Path);
        var beside = Path.Join(folder.Path, Path.GetRandomFileName() + Unfinished);
        try
        {
            Write(beside, bytes);
            return TextNames.InTurn(wanted).First(name => Moves(beside, folder.FileOf(name)));
        }
        finally
        {
            File.Delete(beside);
        }
    }

    /// <summary>Puts other bytes in place of a text that lies in a folder: whoever reads it has the old ones or the new ones. Who may read it stays.</summary>
    /// <exception cref="IOException">It cannot be written, and then the old bytes stand.</exception>
    /// <exception cref="UnauthorizedAccessException">Like it.</exception>
    public static void Replace(TextFolder folder, string name, byte[] bytes)
    {
        var file = folder.FileOf(name);
        var beside = Path.Join(folder.Path, Path.GetRandomFileName() + Unfinished);
        try
        {
            Write(beside, bytes);
            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(beside, File.GetUnixFileMode(file));
            }

            File.Move(beside, file, overwrite: true);
        }
        finally
        {
            File.Delete(beside);
        }
    }

    /// <summary>Writes a file that is not there yet, down to the disk.</summary>
    public static void Write(string file, byte[] bytes)
    {
        using var stream = new FileStream(file, FileMode.CreateNew, FileAccess.Write);
        stream.Write(bytes);
        stream.Flush(flushToDisk: true);
    }

    /// <summary>False when something has this name already.</summary>
    private static bool Moves(string from, string to)
    {
        try
        {
            File.Move(from, to, overwrite: false);
            return true;
        }
        catch (IOException) when (Path.Exists(to) || new FileInfo(to).LinkTarget is not null)
        {
            return false;
        }
    }
}

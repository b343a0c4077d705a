namespace Doughwright.App.Commands;

/// <summary>A file to write. It is there whole or not at all: what stood there before stays until the new one is complete.</summary>
internal sealed class OutFile
{
    private OutFile(string path) => Path = path;

    /// <summary>As it was typed.</summary>
    public string Path { get; }

    /// <summary>Null with a fault where nothing can be written.</summary>
    /// <param name="read">Files that are read, which must not be written over.</param>
    public static OutFile? At(string path, IReadOnlyList<string> read, Faults faults)
    {
        if (string.IsNullOrWhiteSpace(path) || path.Contains('\0') || System.IO.Path.EndsInDirectorySeparator(path) || Directory.Exists(path))
        {
            faults.Add("out-is-folder", ("file", path));
            return null;
        }

        var whole = System.IO.Path.GetFullPath(path);
        if (!Directory.Exists(System.IO.Path.GetDirectoryName(whole)))
        {
            faults.Add("out-folder-missing", ("file", path));
            return null;
        }

        if (read.Any(other => other != "-" && other.Length > 0 && System.IO.Path.GetFullPath(other) == whole))
        {
            faults.Add("out-is-recipe", ("file", path));
            return null;
        }

        return new(path);
    }

    /// <summary>False with a fault where it could not be written.</summary>
    public bool Write(byte[] bytes, Faults faults)
    {
        try
        {
            WholeFile.Write(Path, bytes);
            return true;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            faults.Add("out-not-written", ("file", Path));
            return false;
        }
    }
}

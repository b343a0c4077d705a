namespace Doughwright.App.Commands;

/// <summary>Writes a file whole or not at all: beside it first, under a name nobody can know, then in its place.</summary>
internal static class WholeFile
{
    /// <exception cref="IOException">It cannot be written; what stood there stays.</exception>
    /// <exception cref="UnauthorizedAccessException">Like it.</exception>
    public static void Write(string file, byte[] bytes)
    {
        var whole = Path.GetFullPath(file);
        var beside = Path.Join(Path.GetDirectoryName(whole), Path.GetRandomFileName() + ".part");
        try
        {
            using (var stream = new FileStream(beside, FileMode.CreateNew, FileAccess.Write))
            {
                stream.Write(bytes);
                stream.Flush(flushToDisk: true);
            }

            File.Move(beside, whole, overwrite: true);
        }
        finally
        {
            File.Delete(beside);
        }
    }
}

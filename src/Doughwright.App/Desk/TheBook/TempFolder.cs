using Doughwright.Book.Opening;

namespace Doughwright.App.Desk.TheBook;

/// <summary>A folder that nobody else reads, gone when it is let go.</summary>
internal sealed class TempFolder : IDisposable
{
    private TempFolder(string path) => Path = path;

    public string Path { get; }

    /// <exception cref="BookException">None can be made.</exception>
    public static TempFolder Make()
    {
        try
        {
            return new(Directory.CreateTempSubdirectory().FullName);
        }
        catch (Exception problem) when (BookException.Of(problem, System.IO.Path.GetTempPath()) is { } told)
        {
            throw told;
        }
    }

    /// <summary>Writes a file into it.</summary>
    /// <returns>Where it lies.</returns>
    /// <exception cref="BookException">It cannot be written.</exception>
    public async Task<string> Put(string name, Func<Stream, Task> write)
    {
        try
        {
            await using var stream = new FileStream(File(name), FileMode.CreateNew);
            await write(stream);
            return File(name);
        }
        catch (Exception problem) when (BookException.Of(problem, File(name)) is { } told)
        {
            throw told;
        }
    }

    public string File(string name) => System.IO.Path.Join(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}

using System.Text;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Hosting;

namespace Doughwright.App.Desk.Shelf;

/// <summary>
/// What could not be laid into the book when it was made. It is told until its file is gone or the author has said that it is done with: a list of it lies beside
/// the book.
/// </summary>
internal sealed class LeftTexts(DataFolder folder)
{
    private readonly Lock turn = new();

    /// <summary>Each as it lies there now.</summary>
    /// <exception cref="IOException">The list cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">Like it.</exception>
    public IReadOnlyList<LeftText> All()
    {
        lock (turn)
        {
            return [.. Files().Select(Look).OfType<LeftText>()];
        }
    }

    /// <summary>Whether it was once said what is left, though the author may be done with all of it.</summary>
    public bool WasKept => File.Exists(folder.Left);

    /// <summary>Whether the author is not done with a file yet.</summary>
    public bool Tells(string file)
    {
        lock (turn)
        {
            return Files().Contains(file);
        }
    }

    /// <exception cref="IOException">It cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">Like it.</exception>
    public void Keep(IEnumerable<LeftText> left)
    {
        // What they are picked from may be this list.
        string[] files = [.. left.Select(text => text.File)];
        lock (turn)
        {
            Write(files);
        }
    }

    /// <summary>Tells something no more. Its file stays where it is.</summary>
    /// <returns>Whether it was told.</returns>
    /// <exception cref="IOException">It cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">Like it.</exception>
    public bool Forget(string file)
    {
        lock (turn)
        {
            var there = Files();
            Write([.. there.Where(one => one != file)]);
            return there.Contains(file);
        }
    }

    /// <summary>Null for what is gone.</summary>
    private LeftText? Look(string file)
    {
        if (OlderFolder.PlaceOf(folder, file) is not var (texts, name) || texts.Texts().FirstOrDefault(text => text.Name == name) is not { } found)
        {
            return null;
        }

        LaidTexts.Read(texts, found, out var trouble);
        return new(file, name, trouble);
    }

    private string[] Files() => File.Exists(folder.Left) ? [.. File.ReadAllLines(folder.Left).Where(line => line.Length > 0).Select(Uri.UnescapeDataString)] : [];

    /// <summary>One in each line, escaped: names may hold anything.</summary>
    /// <summary>A list that is empty stays, so that what is done with is not told again; where there never was one, none begins.</summary>
    private void Write(string[] files)
    {
        if (files.Length > 0 || WasKept)
        {
            WholeFile.Write(folder.Left, Encoding.UTF8.GetBytes(string.Concat(files.Select(file => Uri.EscapeDataString(file) + "\n"))));
        }
    }
}

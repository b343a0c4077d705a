using System.Text;
using Doughwright.App.Desk.Hosting;

namespace Doughwright.App.Desk.Shelf;

/// <summary>
/// Results on disk that can be computed again at any time. What is damaged, or was not written here, counts as not there; what cannot be written
/// is computed again next time. So nothing here ever fails.
/// </summary>
internal sealed class KeptResults(DataFolder folder, SealKey key)
{
    /// <summary>Files that are kept in any case. A shelf of 200 recipes takes 400 for each kitchen.</summary>
    public const int Most = 4000;

    /// <summary>Files that are kept for each recipe of a large shelf: its row and its strip, in this kitchen and in another.</summary>
    private const int OfEachRecipe = 4;

    private const string Ending = ".kept";
    private const string Unfinished = ".unfinished";

    /// <summary>Larger than any row or strip by far.</summary>
    private const int Largest = 1024 * 1024;

    /// <param name="name">Letters, digits and hyphens.</param>
    /// <returns>Null when nothing sound is kept under this name.</returns>
    public string? Find(string name)
    {
        try
        {
            var file = new FileInfo(FileOf(name));
            if (!file.Exists || file.LinkTarget is not null || file.Length is 0 or > Largest)
            {
                return null;
            }

            var text = File.ReadAllText(file.FullName);
            var end = text.IndexOf('\n');
            if (end <= 0 || !text.AsSpan(0, end).SequenceEqual(Seal(name, text[(end + 1)..])))
            {
                return null;
            }

            // What is used stays. Many systems do not note by themselves that a file was read.
            file.LastAccessTimeUtc = DateTime.UtcNow;
            return text[(end + 1)..];
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    public void Keep(string name, string text)
    {
        var beside = Path.Join(folder.Kept, Path.GetRandomFileName() + Unfinished);
        try
        {
            Directory.CreateDirectory(folder.Kept);
            File.WriteAllText(beside, Seal(name, text) + "\n" + text);
            File.Move(beside, FileOf(name), overwrite: true);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Remove(beside);
        }
    }

    /// <summary>Removes what was used longest ago where there is more than a shelf needs, and what a desk that was ended left unfinished.</summary>
    /// <param name="recipes">How many lie on the shelf.</param>
    public void Trim(int recipes)
    {
        try
        {
            var inside = new DirectoryInfo(folder.Kept);
            if (!inside.Exists)
            {
                return;
            }

            var kept = inside.GetFiles("*" + Ending);
            var over = kept.OrderByDescending(file => file.LastAccessTimeUtc).Skip(Math.Max(Most, OfEachRecipe * recipes));
            var newest = kept.Length == 0 ? DateTime.MinValue : kept.Max(file => file.LastWriteTimeUtc);
            var left = inside.GetFiles("*" + Unfinished).Where(file => file.LastWriteTimeUtc < newest.AddHours(-1));
            foreach (var file in over.Concat(left))
            {
                Remove(file.FullName);
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // The next shelf tries again.
            return;
        }
    }

    private static void Remove(string file)
    {
        try
        {
            File.Delete(file);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // What cannot be removed is overwritten or ignored later.
            return;
        }
    }

    private string FileOf(string name) => Path.Join(folder.Kept, name + Ending);

    private string Seal(string name, string text) => Convert.ToHexStringLower(key.Seal(Encoding.UTF8.GetBytes(name + "\n" + text)));
}

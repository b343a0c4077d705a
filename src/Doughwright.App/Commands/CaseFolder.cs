using Doughwright.Engine.Recipes;

namespace Doughwright.App.Commands;

/// <summary>The texts of the cases in a folder and the folders under it; or one text alone.</summary>
/// <param name="Root">Names are told from here.</param>
/// <param name="Texts">Full paths, in the order of their names.</param>
internal sealed record CaseFolder(string Root, IReadOnlyList<string> Texts)
{
    /// <summary>More than anybody lays down; a whole disk is a slip of the finger.</summary>
    private const int MostTexts = 5000;

    private const int DeepestFolder = 16;

    /// <summary>Looks for texts. Null with a fault when there is no such folder, or nothing in it.</summary>
    public static CaseFolder? Read(string path, Faults faults)
    {
        try
        {
            if (File.Exists(path))
            {
                return new(Path.GetDirectoryName(Path.GetFullPath(path))!, [Path.GetFullPath(path)]);
            }

            if (!Directory.Exists(path))
            {
                faults.Add("case-folder-missing", ("folder", path));
                return null;
            }

            var root = Path.GetFullPath(path);
            // A link may lead back to where it lies.
            var looking = new EnumerationOptions { RecurseSubdirectories = true, MaxRecursionDepth = DeepestFolder, AttributesToSkip = FileAttributes.ReparsePoint };
            string[] texts = [.. Directory.EnumerateFiles(root, "*.yaml", looking).Take(MostTexts + 1)];
            if (texts.Length is 0 or > MostTexts)
            {
                faults.Add(texts.Length == 0 ? "case-folder-empty" : "case-folder-large", ("folder", path), ("most", MostTexts));
                return null;
            }

            return new(root, [.. texts.OrderBy(text => Path.GetRelativePath(root, text), StringComparer.Ordinal)]);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            faults.Add("case-folder-unreadable", ("folder", path));
            return null;
        }
    }

    /// <summary>The name of a text from the folder on, the same on every system.</summary>
    public string NameOf(string text) => Path.GetRelativePath(Root, text).Replace('\\', '/');

    /// <summary>A file of the folder as text; null when it is not there or cannot be read.</summary>
    public static InputFile? Open(string path, Faults faults) => InputFile.Read(path, Stream.Null, faults);

    /// <summary>Puts the name of its text in front of the place of a finding.</summary>
    public static Finding In(string name, Finding finding) =>
        finding with { Place = finding.Place.Length == 0 ? name : $"{name}: {finding.Place}" };
}

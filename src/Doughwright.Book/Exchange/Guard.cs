namespace Doughwright.Book.Exchange;

/// <summary>
/// Looks at the names and sizes of an export before anything is unpacked. Nothing is ever written under a name that comes from there; a name is looked at all
/// the same, because one that leads elsewhere shows that the whole was not made by this program.
/// </summary>
internal static class Guard
{
    public const int MostFiles = 9_999;
    public const long MostBytes = 8L << 30;

    /// <summary>Texts that say nearly the same again and again pack to about a hundredth.</summary>
    private const int MostTimes = 500;

    /// <summary>Below this nobody is harmed, however well it packs.</summary>
    private const long Harmless = 1 << 20;

    private const int LongestName = 200;

    private static readonly string[] Archives = [".zip", ".gz", ".tgz", ".tar", ".7z", ".rar", ".bz2", ".xz", ".zst", ".jar", ".cab"];

    /// <summary>The files by name; nothing with faults when one of them must not be opened.</summary>
    public static IReadOnlyDictionary<string, SourceFile> Look(Source source, ExchangeFaults faults)
    {
        if (source.IsArchive && source.Files.Count > MostFiles)
        {
            faults.Add("import-too-many", ("most", MostFiles));
        }

        Dictionary<string, SourceFile> files = new(StringComparer.Ordinal);
        Dictionary<string, string> seen = new(StringComparer.OrdinalIgnoreCase);
        foreach (var file in source.Files)
        {
            if (FaultOf(file) is { } kind)
            {
                faults.Add(kind, ("name", file.Name));
            }
            else if (!seen.TryAdd(file.Name.TrimEnd('/'), file.Name))
            {
                faults.Add("import-name-twice", ("name", file.Name), ("other", seen[file.Name.TrimEnd('/')]));
            }
            else if (!file.Name.EndsWith('/'))
            {
                files[file.Name] = file;
            }
        }

        LookAtSizes(source, faults);
        return files;
    }

    private static void LookAtSizes(Source source, ExchangeFaults faults)
    {
        // As decimals: the lengths are what somebody wrote into the archive, and may be as long as numbers go.
        var all = source.Files.Sum(file => (decimal)file.Length);
        if (all > MostBytes)
        {
            faults.Add("import-too-large", ("gigabytes", (int)(MostBytes >> 30)));
        }

        if (all > Harmless && all > (decimal)source.Packed * MostTimes)
        {
            faults.Add("import-too-dense", ("name", source.Path), ("times", MostTimes));
        }

        foreach (var file in source.Files.Where(file => file.Length > Harmless && file.Length / MostTimes > file.Packed))
        {
            faults.Add("import-too-dense", ("name", file.Name), ("times", MostTimes));
        }
    }

    /// <summary>What is wrong with a name; null for one that an export has.</summary>
    internal static string? FaultOf(SourceFile file)
    {
        var name = file.Name;
        var parts = name.Split('/', '\\');
        if (file.IsLink)
        {
            return "import-link";
        }

        if (name.StartsWith('/') || name.Contains('\\') || parts.Contains("..") || (name.Length > 1 && name[1] == ':'))
        {
            return "import-name-leads-out";
        }

        if (IsOdd(name) || parts.Where((part, i) => i < parts.Length - 1 || part.Length > 0).Any(IsOddPart))
        {
            return "import-name-odd";
        }

        return Archives.Contains(Path.GetExtension(name), StringComparer.OrdinalIgnoreCase) ? "import-nested"
            : Layout.IsKnown(name) || (name.EndsWith('/') && Layout.IsFolder(name[..^1])) ? null
            : "import-stranger";
    }

    /// <summary>Beyond the plainest letters, systems do not agree which names are one.</summary>
    private static bool IsOdd(string name) => name.Length is 0 or > LongestName
        || name.Any(letter => !char.IsAscii(letter) || char.IsControl(letter));

    /// <summary>What one system or another reads as another name, or as a device.</summary>
    private static bool IsOddPart(string part) => part.Length == 0 || part == "." || part.EndsWith('.') || part.EndsWith(' ') || part.StartsWith(' ') || part.Contains(':') || Layout.IsDevice(part);
}

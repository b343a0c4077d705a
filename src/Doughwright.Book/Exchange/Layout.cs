using System.Globalization;
using Doughwright.Book.Papers;
using Doughwright.Engine.Ingredients;

namespace Doughwright.Book.Exchange;

/// <summary>Where what stands in an export.</summary>
internal static class Layout
{
    public const string Mark = "book.json";
    public const string Papers = "papers.csv";
    public const string States = "states.jsonl";
    public const string StepsBack = "steps-back.csv";
    public const string Kept = "kept.csv";
    public const string Said = "said.csv";
    public const string Corrections = "corrections.csv";
    public const string Photos = "photos.csv";
    public const string PhotosOf = "photos-of.csv";
    public const string PhotoFolder = "photos";

    /// <summary>Of the export, not of the book: a newer program may write more into a file.</summary>
    public const int Form = 1;

    private const int LongestName = 60;

    public static readonly IReadOnlyList<string> Tables = [Papers, States, StepsBack, Kept, Said, Corrections, Photos, PhotosOf];

    /// <summary>Kinds of photos with their endings.</summary>
    public static readonly IReadOnlyDictionary<string, string> PhotoEndings = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["image/jpeg"] = ".jpg",
        ["image/png"] = ".png",
        ["image/webp"] = ".webp",
    };

    private static readonly string[] Devices =
        ["con", "prn", "aux", "nul", .. Enumerable.Range(0, 10).SelectMany(number => new[] { $"com{number}", $"lpt{number}" })];

    /// <summary>Folder of a sort's texts.</summary>
    public static string FolderOf(PaperSort sort) => PaperStore.Word(sort) + "s";

    public static string EndingOf(PaperSort sort) => sort == PaperSort.Note ? ".md" : ".yaml";

    public static bool IsDevice(string name) => Devices.Contains(name.Split('.')[0], StringComparer.OrdinalIgnoreCase);

    /// <summary>A file for a text of this name that no other has: small letters of the plainest kind, so that it is one name on every system.</summary>
    public static string FileOf(PaperSort sort, string name, HashSet<string> taken)
    {
        var plain = string.Concat(Slug.Of(name).Select(letter => char.IsAsciiLetterOrDigit(letter) || letter == '-' ? letter : '_'));
        plain = plain.Length > LongestName ? plain[..LongestName] : plain;
        plain = plain.Length == 0 ? "text" : IsDevice(plain) ? plain + "_" : plain;
        return Enumerable.Range(1, int.MaxValue)
            .Select(number => $"{FolderOf(sort)}/{plain}{(number == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $"-{number}"))}{EndingOf(sort)}")
            .First(taken.Add);
    }

    /// <summary>Whether a name is one that an export may hold.</summary>
    public static bool IsKnown(string name) =>
        name == Mark || Tables.Contains(name)
        || (name.Split('/') is [var folder, var file] && file.Length > 0
            && (folder == PhotoFolder
                ? PhotoEndings.Values.Contains(Path.GetExtension(file))
                : Enum.GetValues<PaperSort>().Any(sort => FolderOf(sort) == folder && EndingOf(sort) == Path.GetExtension(file))));

    /// <summary>Whether a name is one of the folders.</summary>
    public static bool IsFolder(string name) => name == PhotoFolder || Enum.GetValues<PaperSort>().Any(sort => FolderOf(sort) == name);
}

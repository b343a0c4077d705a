using System.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Publishing.Pages;

namespace Doughwright.App.Commands;

/// <summary>Puts a page into a folder: whole or not at all, and never over a file that is not a page of ours.</summary>
internal static class PageFile
{
    private const string Ending = ".html";

    /// <summary>Letters of a title that a file name takes; names of more than 255 bytes are refused by most systems.</summary>
    private const int LongestName = 60;

    /// <summary>As far into a file as its head tells who made it.</summary>
    private const int Head = 1024;

    /// <summary>Names that one system or another keeps for devices, whatever their ending.</summary>
    private static readonly string[] Devices =
        ["con", "prn", "aux", "nul", .. Enumerable.Range(0, 10).SelectMany(number => new[] { $"com{number}", $"lpt{number}" })];

    /// <summary>The file that was written; null with a fault when none could be.</summary>
    public static string? Write(string folder, string title, byte[] page, Faults faults)
    {
        if (File.Exists(folder))
        {
            faults.Add("page-out-is-file", ("folder", folder));
            return null;
        }

        var file = Path.Join(folder, NameOf(title));
        try
        {
            Directory.CreateDirectory(folder);
            if (Directory.Exists(file) || (File.Exists(file) && !IsOurs(file)))
            {
                faults.Add("page-not-ours", ("file", file));
                return null;
            }

            WholeFile.Write(file, page);
            return file;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            faults.Add("page-out-unwritable", ("folder", folder), ("reason", problem.Message));
            return null;
        }
    }

    /// <summary>What the page of a title is called: "potato-rolls.html".</summary>
    internal static string NameOf(string title)
    {
        var slug = Slug.Of(title);
        var cut = LongestName < slug.Length && char.IsHighSurrogate(slug[LongestName - 1]) ? LongestName - 1 : LongestName;
        slug = slug.Length > LongestName ? slug[..cut].TrimEnd('-') : slug;
        return (slug.Length == 0 || Devices.Contains(slug) ? "recipe-" + slug : slug).TrimEnd('-') + Ending;
    }

    private static bool IsOurs(string file)
    {
        using var stream = File.OpenRead(file);
        var head = new byte[Head];
        var read = stream.ReadAtLeast(head, Head, throwOnEndOfStream: false);
        return Encoding.UTF8.GetString(head, 0, read).Contains($"<meta name=\"generator\" content=\"{ReaderPage.Generator} ", StringComparison.Ordinal);
    }
}

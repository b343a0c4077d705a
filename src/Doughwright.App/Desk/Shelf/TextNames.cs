using System.Text;
using Doughwright.Engine.Ingredients;

namespace Doughwright.App.Desk.Shelf;

/// <summary>Names of texts: what can stand in an address, and what a new text is called.</summary>
internal static class TextNames
{
    public const string Ending = ".yaml";

    /// <summary>Letters of a new name. With its number and ending it stays below what file systems allow, whatever the alphabet.</summary>
    private const int Longest = 50;

    private static readonly string[] Devices =
        ["con", "prn", "aux", "nul", .. Enumerable.Range(1, 9).SelectMany(number => new[] { $"com{number}", $"lpt{number}" })];

    /// <summary>Whether a name comes back from an address as it went in: dots alone are a path, and some signs are taken for its parts.</summary>
    public static bool FitsAddress(string name) =>
        name.Trim('.').Length > 0
        && !name.Any(letter => char.IsControl(letter) || letter is '/' or '\\' or '\ufffd')
        && !name.Contains("%2f", StringComparison.OrdinalIgnoreCase)
        && name.EnumerateRunes().All(rune => rune != Rune.ReplacementChar);

    /// <summary>A name from a title: letters, digits and hyphens, so no title leads out of the folder.</summary>
    /// <param name="otherwise">For a title without a letter or a digit.</param>
    public static string Of(string title, string otherwise)
    {
        var slug = Slug.Of(title);
        var cut = new StringBuilder(Longest);
        foreach (var rune in slug.EnumerateRunes())
        {
            if (cut.Length + rune.Utf16SequenceLength > Longest)
            {
                break;
            }

            cut.Append(rune.ToString());
        }

        return cut.ToString().Trim('-') is { Length: > 0 } name ? name : otherwise;
    }

    /// <summary>The first, second, third name to try: "loaf", "loaf-2", "loaf-3". Names that some systems keep for devices are left out.</summary>
    public static IEnumerable<string> InTurn(string name)
    {
        if (!Devices.Contains(name, StringComparer.OrdinalIgnoreCase))
        {
            yield return name;
        }

        for (var number = 2; ; number++)
        {
            yield return FormattableString.Invariant($"{name}-{number}");
        }
    }
}

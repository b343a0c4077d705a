using System.Text;

namespace Doughwright.Engine.Ingredients;

/// <summary>Names to ids: small letters and digits, everything else one hyphen. "Instant yeast" is instant-yeast.</summary>
public static class Slug
{
    /// <summary>The id that a name gives.</summary>
    public static string Of(string name)
    {
        var slug = new StringBuilder(name.Length);
        foreach (var c in name)
        {
            if (char.IsLetterOrDigit(c) || char.IsSurrogate(c))
            {
                slug.Append(char.ToLowerInvariant(c));
            }
            else if (slug.Length > 0 && slug[^1] != '-' && c is not ('\'' or '\u2019'))
            {
                slug.Append('-');
            }
        }

        return slug.ToString().TrimEnd('-');
    }

    /// <summary>An id in words, to be shown: "final-proof" is "Final proof".</summary>
    public static string InWords(string id) => id.Length == 0 ? id : char.ToUpperInvariant(id[0]) + id[1..].Replace('-', ' ');
}

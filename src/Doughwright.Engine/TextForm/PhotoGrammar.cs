using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>"1f9c03ab77e2d4c1, the crumb of the second tin": the name of a photo in the book, and what is to be seen on it.</summary>
internal static class PhotoGrammar
{
    public const string Key = "photo";

    /// <summary>Digits of a name: so many that nobody guesses one, and no two photos of a book share one.</summary>
    public const int Digits = 16;

    private const int MostDigits = 64;
    private const string Comma = ", ";

    public static IReadOnlyList<Photo> Read(Section section) => [.. section.Lines(Key).Select(Read).OfType<Photo>()];

    public static string Write(Photo photo) => photo.Name + Comma + photo.Words;

    /// <summary>One is said in a line, several are a list.</summary>
    public static TreeBuilder Photos(this TreeBuilder builder, IReadOnlyList<Photo> photos) => photos is [var only]
        ? builder.Words(Key, Write(only))
        : builder.List(Key, [.. photos.Select(Write)]);

    public static bool IsName(string name) => name.Length is >= Digits and <= MostDigits && name.All(char.IsAsciiHexDigitLower);

    private static Photo? Read(Phrase words)
    {
        var comma = words.Text.IndexOf(',');
        var (name, said) = comma < 0 ? (words.Text, "") : (words.Text[..comma].TrimEnd(), words.Text[(comma + 1)..].Trim());
        if (IsName(name) && said.Length > 0)
        {
            return new(name, said, words.Position);
        }

        words.Fault(FormFaults.PhotoNotUnderstood);
        return null;
    }
}

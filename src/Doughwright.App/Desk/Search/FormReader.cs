using Doughwright.Engine.TextForm;

namespace Doughwright.App.Desk.Search;

/// <summary>
/// Goes through the lines of a text in their order and leaves out what belongs to its form: the first line, and the keys that every text has. Keys that are
/// names stay: of ingredients, parts, steps, other ways, vessels, and of what is lacking.
/// </summary>
internal sealed class FormReader
{
    private const string FormKey = "doughwright";

    private static readonly HashSet<string> OfPart = ["kind", "name", "base"];

    private static readonly HashSet<string> OfStep =
    [
        "name", "kind", "of", "hands", "way", "where", "oven", "trays", "on", "steam", "lid", "vessel", "depth", "cover", "fold", "folds", "ends", "measured",
        "cue", "tools", "words", "order", "photo", "photos", "learn", "variants",
    ];

    private static readonly HashSet<string> OfIngredient = [.. IngredientText.Keys];

    private static readonly HashSet<string> OfKitchen = ["name", .. KitchenText.Keys];

    /// <summary>Key of the section that the line is in.</summary>
    private string section = "";

    /// <summary>How far the names of the section are indented; 0 until there is one.</summary>
    private int names;

    /// <summary>How far the key of a block of prose is indented; -1 outside of one.</summary>
    private int block = -1;

    /// <summary>What an author wrote in the next line.</summary>
    public string Written(string line)
    {
        var words = line.TrimStart(' ');
        var depth = line.Length - words.Length;
        if (block >= 0 && (words.Length == 0 || depth > block))
        {
            return line;
        }

        block = -1;
        if (words.Length == 0 || words[0] is '#' or '-' || KeyOf(words) is not { } key)
        {
            return line;
        }

        var value = words[(key.Length + 1)..];
        if (depth == 0)
        {
            (section, names) = (key, 0);
        }
        else if (names == 0)
        {
            names = depth;
        }

        block = value.TrimStart().StartsWith('|') ? depth : -1;
        return depth == 0 && key == FormKey ? "" : IsOfTheForm(key, depth) ? value : line;
    }

    private bool IsOfTheForm(string key, int depth) => depth == 0 || section switch
    {
        "home" => depth == names && OfKitchen.Contains(key),
        "own" => depth > names && OfIngredient.Contains(key),
        "parts" => depth > names && OfPart.Contains(key),
        "steps" => depth > names && OfStep.Contains(key),
        "accepted" => true,
        _ => false,
    };

    private static string? KeyOf(string words)
    {
        var at = words.IndexOf(": ", StringComparison.Ordinal);
        return at > 0 ? words[..at] : words.EndsWith(':') ? words[..^1] : null;
    }
}

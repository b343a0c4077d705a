namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>Words of measures that have a plural: "1 sachet", "2 sachets". Sizes and short names of spoons have none.</summary>
internal static class PieceWords
{
    private static readonly string[] Nouns =
    [
        "egg", "yolk", "white", "piece", "sachet", "packet", "envelope", "package", "pack", "tin", "can", "jar", "bar", "cube", "stick", "cake", "block",
        "slice", "square", "clove", "tub", "pot", "carton", "cup", "pint", "quart", "tablespoon", "teaspoon", "tablespoonful", "teaspoonful", "pinch", "dash",
    ];

    /// <summary>The words behind a number, for that number. What follows a comma or a bracket is the author's and stays.</summary>
    public static string Counted(string behind, double amount)
    {
        var end = behind.IndexOfAny([',', '(']) is var at and >= 0 ? at : behind.Length;
        var words = behind[..end].Split(' ');
        for (var i = 0; i < words.Length; i++)
        {
            if (Array.Find(Nouns, noun => words[i] == noun || words[i] == Many(noun)) is { } noun)
            {
                words[i] = amount > 1 ? Many(noun) : noun;
                return string.Join(' ', words) + behind[end..];
            }
        }

        return behind;
    }

    private static string Many(string noun) => noun + (noun[^1] is 's' or 'h' ? "es" : "s");
}

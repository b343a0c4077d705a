using System.Text;

namespace Doughwright.Engine.TextForm;

/// <summary>The words of a closed list as they stand in a text: ProofingPlace is "proofing place".</summary>
internal static class EnumWords<T> where T : struct, Enum
{
    private static readonly Dictionary<string, T> ByWord = Enum.GetValues<T>().ToDictionary(Of);

    public static IEnumerable<string> All => ByWord.Keys;

    public static T? Find(string word) => ByWord.TryGetValue(word, out var value) ? value : null;

    public static string Of(T value)
    {
        var words = new StringBuilder();
        foreach (var c in value.ToString())
        {
            words.Append(char.IsUpper(c) && words.Length > 0 ? " " : "").Append(char.ToLowerInvariant(c));
        }

        return words.ToString();
    }
}

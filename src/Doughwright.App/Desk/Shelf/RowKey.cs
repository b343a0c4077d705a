using System.Security.Cryptography;
using System.Text;
using Doughwright.App.Json;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>Names what a row is computed from: texts, program, larder, words and measures. Rows of the same key are the same.</summary>
internal sealed class RowKey
{
    /// <summary>Digits of a name: enough that two never meet.</summary>
    private const int Digits = 40;

    private readonly string program;

    public RowKey(Words words)
    {
        var said = words.Entries.OrderBy(entry => entry.Key, StringComparer.Ordinal).SelectMany(entry => new[] { entry.Key, entry.Value });
        program = Hash([
            Stamp.EngineVersion,
            Larder.Shipped.Version,
            // Between two versions the program still changes, for those who build it.
            .. new[] { typeof(Recipe), typeof(Words), typeof(RowKey) }.Select(type => type.Module.ModuleVersionId.ToString()),
            .. said,
        ]);
    }

    /// <param name="kitchen">Text of the kitchen; null is the recipe's own.</param>
    public string Of(string name, byte[] recipe, byte[]? kitchen, Voice voice) => Hash([
        program,
        voice.Measures.ToString(),
        name,
        Convert.ToHexStringLower(SHA256.HashData(recipe)),
        kitchen is null ? "" : Convert.ToHexStringLower(SHA256.HashData(kitchen)),
    ])[..Digits];

    private static string Hash(IEnumerable<string> parts)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var part in parts)
        {
            var bytes = Encoding.UTF8.GetBytes(part);
            hash.AppendData(BitConverter.GetBytes(bytes.Length));
            hash.AppendData(bytes);
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
}

using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Doughwright.App.Json;

/// <summary>One JSON object as text. Every object opens with the number of its form.</summary>
internal static class JsonText
{
    /// <summary>Changes when a name or a meaning changes; adding a field does not count.</summary>
    private const int Form = 1;

    private static readonly JsonWriterOptions Style = new()
    {
        Indented = true,
        NewLine = "\n",
        // The default writes every letter outside ASCII as an escape, for web pages. This goes to programs and people.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Of(Action<Utf8JsonWriter> write)
    {
        var bytes = new ArrayBufferWriter<byte>(4096);
        using (var json = new Utf8JsonWriter(bytes, Style))
        {
            json.WriteStartObject();
            json.WriteNumber("form", Form);
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.WrittenSpan) + "\n";
    }

    public static void Number(this Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } known)
        {
            json.WriteNumber(name, known);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    public static void Array<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    public static void Words(this Utf8JsonWriter json, string name, IEnumerable<string> words)
    {
        json.WriteStartArray(name);
        foreach (var word in words)
        {
            json.WriteStringValue(word);
        }

        json.WriteEndArray();
    }

    /// <summary>A member of a closed list as programs read it: "proofingPlace".</summary>
    public static string Name(Enum member)
    {
        var name = member.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }
}

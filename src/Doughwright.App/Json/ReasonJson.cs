using System.Text.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Json;

/// <summary>The tree of reasons of one figure.</summary>
internal static class ReasonJson
{
    public static void Write(Utf8JsonWriter json, Reason reason, Voice voice)
    {
        json.WriteString("name", ReasonWords.Name(reason, voice));
        json.WriteString("kind", reason.Kind);
        json.Number("value", reason.Value);
        json.WriteString("unit", reason.Unit);
        if (reason.Source is { } source)
        {
            json.WriteString("source", source);
        }

        json.WriteBoolean("additive", reason.Additive);
        json.Array("parts", reason.Parts, part => Write(json, part, voice));
    }
}

using System.Text.Json;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Json;

/// <summary>{ form, stamp, title, findings }, and the list of findings that every object carries.</summary>
internal static class FindingsJson
{
    public static string Write(Stamp stamp, string title, IReadOnlyList<Finding> findings, Voice voice) => JsonText.Of(json =>
    {
        stamp.WriteTo(json);
        json.WriteString("title", title);
        WriteList(json, findings, voice);
    });

    /// <summary>{ form, findings }: a line was not understood, and nothing was computed.</summary>
    public static string WriteNotUnderstood(IReadOnlyList<Finding> findings, Voice voice) => JsonText.Of(json => WriteList(json, findings, voice));

    public static void WriteList(Utf8JsonWriter json, IReadOnlyList<Finding> findings, Voice voice, string name = "findings") => json.Array(name, findings, finding =>
    {
        json.WriteString("kind", finding.Kind);
        json.WriteString("id", finding.Id);
        json.WriteString("grade", JsonText.Name(finding.Grade));
        json.WriteBoolean("safety", finding.Safety);
        json.WriteString("place", finding.Place);
        json.WriteString("message", FindingWords.Message(finding, voice));
        json.WriteString("wayOut", FindingWords.WayOut(finding, voice));
        if (finding.Position.IsKnown)
        {
            json.WriteNumber("line", finding.Position.Line);
            json.WriteNumber("column", finding.Position.Column);
        }

        if (finding.Quoted is { } quoted)
        {
            json.WriteString("quoted", quoted);
        }

        json.WriteBoolean("understood", !finding.NotUnderstood);
    });
}

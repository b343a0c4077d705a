using System.Text.Json;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Json;

/// <summary>{ form, stamp, title, findings }, and the list of findings that every object carries.</summary>
internal static class FindingsJson
{
    public static string Write(
        Stamp stamp, Recipe recipe, IReadOnlyList<Finding> findings, IReadOnlyList<(Finding Finding, string Reason)> accepted, Voice voice) => JsonText.Of(json =>
    {
        stamp.WriteTo(json);
        json.WriteString("title", recipe.Title);
        WriteList(json, findings, recipe, voice);
        json.Array("accepted", accepted, one =>
        {
            json.WriteString("id", one.Finding.Id);
            json.WriteString("place", one.Finding.Place);
            json.WriteString("message", FindingWords.Message(one.Finding, voice));
            json.WriteString("reason", one.Reason);
        });
    });

    /// <summary>{ form, findings }: a line was not understood, and nothing was computed.</summary>
    public static string WriteNotUnderstood(IReadOnlyList<Finding> findings, Voice voice) => JsonText.Of(json => WriteList(json, findings, null, voice));

    /// <summary>Findings of something else than the recipe that was read: there is no text of theirs to be changed.</summary>
    public static void WriteList(Utf8JsonWriter json, IReadOnlyList<Finding> findings, Voice voice, string name = "findings") =>
        WriteList(json, findings, null, voice, name);

    /// <summary>The findings, each with its ways out.</summary>
    /// <param name="recipe">Null when a line was not understood.</param>
    public static void WriteList(Utf8JsonWriter json, IReadOnlyList<Finding> findings, Recipe? recipe, Voice voice, string name = "findings") => json.Array(name, findings, finding =>
    {
        WriteOne(json, finding, voice);
        json.Array("remedies", Remedies.For(finding, recipe), remedy =>
        {
            json.WriteString("id", remedy.Id);
            json.WriteString("verb", RemedyWords.Verb(remedy, voice));
        });
    });

    private static void WriteOne(Utf8JsonWriter json, Finding finding, Voice voice)
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
    }
}

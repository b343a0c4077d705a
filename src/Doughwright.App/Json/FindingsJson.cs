using System.Text.Json;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Json;

/// <summary>{ form, stamp, title, findings, accepted }, and the lists of findings that every object carries.</summary>
internal static class FindingsJson
{
    public static string Write(Stamp stamp, Recipe recipe, Judgement findings, Voice voice) => JsonText.Of(json =>
    {
        stamp.WriteTo(json);
        json.WriteString("title", recipe.Title);
        WriteJudged(json, findings, recipe, voice);
    });

    /// <summary>{ form, findings }: a line was not understood, and nothing was computed.</summary>
    public static string WriteNotUnderstood(IReadOnlyList<Finding> findings, Voice voice) => JsonText.Of(json => WriteList(json, findings, null, voice));

    /// <summary>Findings of something else than the recipe that was read: there is no text of theirs to be changed.</summary>
    public static void WriteList(Utf8JsonWriter json, IReadOnlyList<Finding> findings, Voice voice, string name = "findings") =>
        WriteList(json, findings, null, voice, name);

    /// <summary>"findings" without what can be done about them, and "accepted".</summary>
    public static void WriteJudged(Utf8JsonWriter json, Judgement findings, Voice voice)
    {
        WriteList(json, findings.Open, voice);
        WriteAccepted(json, findings, voice);
    }

    /// <summary>"findings", each with its ways out, and "accepted".</summary>
    public static void WriteJudged(Utf8JsonWriter json, Judgement findings, Recipe recipe, Voice voice)
    {
        WriteList(json, findings.Open, recipe, voice);
        WriteAccepted(json, findings, voice);
    }

    private static void WriteAccepted(Utf8JsonWriter json, Judgement findings, Voice voice) => json.Array("accepted", findings.Accepted, one =>
    {
        json.WriteString("id", one.Finding.Id);
        json.WriteString("place", one.Finding.Place);
        json.WriteString("message", FindingWords.Message(one.Finding, voice));
        json.WriteString("reason", one.Reason);
    });

    /// <summary>The findings, each with its ways out.</summary>
    /// <param name="recipe">Null when a line was not understood.</param>
    private static void WriteList(Utf8JsonWriter json, IReadOnlyList<Finding> findings, Recipe? recipe, Voice voice, string name = "findings") => json.Array(name, findings, finding =>
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

using System.Text.Json;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Readying;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Json;

/// <summary>The object of "ready".</summary>
internal static class ReadyJson
{
    public static string Write(Stamp stamp, ReadyAnswer answer, Judgement findings, Voice voice) => JsonText.Of(json =>
    {
        stamp.WriteTo(json);
        json.WriteString("title", answer.AsWritten.Recipe.Title);
        json.WriteNumber("wantedMinutes", answer.Wanted.Minutes);
        WriteTotal(json, answer.AsWritten);
        json.Array("ways", answer.Ways, way => WriteWay(json, way, voice));
        FindingsJson.WriteJudged(json, findings, voice);
    });

    private static void WriteWay(Utf8JsonWriter json, ReadyWay way, Voice voice)
    {
        json.WriteString("lever", JsonText.Name(way.Lever));
        json.WriteString("obstacle", way.Obstacle is { } obstacle ? JsonText.Name(obstacle) : null);
        json.Number("soonestMinutes", way.Soonest?.Minutes);
        json.Number("latestMinutes", way.Latest?.Minutes);
        json.Array("doses", way.Doses, dose =>
        {
            json.WriteString("component", dose.Component);
            json.WriteString("line", dose.Line);
            json.WriteNumber("wasGrams", dose.Was.Grams);
            json.WriteNumber("grams", dose.Now.Grams);
            json.WriteNumber("weighedGrams", dose.Weighed.Grams);
        });
        if (way.Water is { } water)
        {
            json.WriteStartObject("water");
            json.WriteString("component", water.Component);
            json.Array("lines", water.Lines, line =>
            {
                json.WriteString("line", line.Line);
                json.Number("wasCelsius", line.Was?.Celsius);
            });
            json.WriteNumber("celsius", water.Now.Celsius);
            json.Number("doughCelsius", water.Dough?.Likely.Celsius);
            json.Number("doughCelsiusLow", water.Dough?.Low.Celsius);
            json.Number("doughCelsiusHigh", water.Dough?.High?.Celsius);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("water");
        }

        WriteTotal(json, way.Rehearsal);
        json.Number("asWeighedMinutes", way.AsWeighed?.Minutes);
        json.Array("moves", way.Moves, move =>
        {
            json.WriteString("step", move.Step);
            json.WriteNumber("wasMinutes", move.Was.Minutes);
            json.WriteNumber("minutes", move.Now.Minutes);
        });
        FindingsJson.WriteList(json, way.Findings, voice);
    }

    private static void WriteTotal(Utf8JsonWriter json, Rehearsal? run)
    {
        json.Number("totalMinutes", run?.Total?.Likely.Minutes);
        json.Number("totalMinutesLow", run?.Total?.Low.Minutes);
        json.Number("totalMinutesHigh", run?.Total?.High?.Minutes);
    }
}

using System.Text.Json;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Warming;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Json;

/// <summary>The object of "place".</summary>
internal static class PlaceJson
{
    public static string Write(Stamp stamp, Rehearsal rehearsal, PlaceAdvice advice, Judgement findings, Voice voice) => JsonText.Of(json =>
    {
        stamp.WriteTo(json);
        json.WriteString("title", rehearsal.Recipe.Title);
        json.WriteString("step", advice.Step);
        json.WriteNumber("targetCelsius", advice.Target.Celsius);
        json.WriteNumber("roomCelsius", advice.Room.Celsius);
        json.WriteBoolean("roomDoes", advice.RoomDoes);
        json.WriteString("notWorkedOut", advice.Refusal is { } refusal ? JsonText.Name(refusal) : null);
        json.Number("doughCelsius", advice.DoughStart?.Celsius);
        WriteTime(json, advice.AtTarget);
        json.WriteStartObject("room");
        WriteTime(json, advice.InRoom);
        WriteSlip(json, advice.RoomAgainstTarget);
        json.WriteEndObject();
        WriteMiss(json, "tooCold", advice.TooCold);
        WriteMiss(json, "tooWarm", advice.TooWarm);
        WriteMiss(json, "doughTooCold", advice.DoughTooCold);
        WriteMiss(json, "doughTooWarm", advice.DoughTooWarm);
        json.Array("places", advice.Places, place => WritePlace(json, place));
        FindingsJson.WriteJudged(json, findings, voice);
    });

    private static void WritePlace(Utf8JsonWriter json, PlaceAnswer place)
    {
        json.WriteString("kind", JsonText.Name(place.Kind));
        json.WriteBoolean("reaches", place.Reaches);
        json.WriteNumber("waterGrams", place.Water.Grams);
        json.WriteNumber("waterCelsius", place.WaterTemperature.Celsius);
        json.WriteNumber("leadMinutes", place.Lead.Minutes);
        json.Number("renewEveryMinutes", place.RenewEvery?.Minutes);
        json.WriteNumber("renewals", place.Renewals);
        WriteWarmth(json, "meanCelsius", place.Mean);
        WriteWarmth(json, "doughEndCelsius", place.DoughEnd);
        WriteWarmth(json, "doughMeanCelsius", place.DoughMean);
        json.WriteNumber("placeWithinMinutes", place.PlaceWithin.Minutes);
        json.WriteNumber("doughWithinMinutes", place.DoughWithin.Minutes);
        WriteTime(json, place.Time);
        json.Words("cautions", place.Cautions.Select(caution => JsonText.Name(caution)));
        json.Array("course", place.Course, point =>
        {
            json.WriteNumber("afterMinutes", point.After.Minutes);
            json.WriteNumber("roomCelsius", point.Room.Celsius);
            json.WriteNumber("waterCelsius", point.Water.Celsius);
            WriteWarmth(json, "aroundCelsius", point.Around);
            WriteWarmth(json, "doughCelsius", point.Dough);
        });
        json.Array("restsOn", place.RestsOn, figure =>
        {
            json.WriteString("name", figure.Name);
            json.WriteNumber("value", figure.Value.Likely);
            json.WriteNumber("low", figure.Value.Low);
            json.Number("high", figure.Value.High);
            json.WriteString("unit", figure.Unit);
            json.WriteString("source", figure.Source);
        });
    }

    private static void WriteMiss(Utf8JsonWriter json, string name, Slip? slip)
    {
        json.WriteStartObject(name);
        WriteSlip(json, slip);
        json.WriteEndObject();
    }

    private static void WriteTime(Utf8JsonWriter json, Estimate<Duration>? time)
    {
        json.Number("minutes", time?.Likely.Minutes);
        json.Number("minutesLow", time?.Low.Minutes);
        json.Number("minutesHigh", time?.High?.Minutes);
    }

    private static void WriteSlip(Utf8JsonWriter json, Slip? slip)
    {
        json.Number("longerMinutes", slip?.Longer.Likely.Minutes);
        json.Number("longerMinutesLow", slip?.Longer.Low.Minutes);
        json.Number("longerMinutesHigh", slip?.Longer.High?.Minutes);
        json.Number("longerPercent", slip?.Share.Likely.Value);
        json.Number("longerPercentLow", slip?.Share.Low.Value);
        json.Number("longerPercentHigh", slip?.Share.High?.Value);
    }

    private static void WriteWarmth(Utf8JsonWriter json, string name, Estimate<Temperature>? warmth)
    {
        json.Number(name, warmth?.Likely.Celsius);
        json.Number(name + "Low", warmth?.Low.Celsius);
        json.Number(name + "High", warmth?.High?.Celsius);
    }
}

using System.Text.Json;
using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Json;

/// <summary>The object of "resize".</summary>
internal static class ResizeJson
{
    public static string Write(Stamp stamp, Resized resized, string? text, Judgement findings, Voice voice) => JsonText.Of(json =>
    {
        stamp.WriteTo(json);
        json.WriteString("title", resized.Before.Recipe.Title);
        json.Number("factor", resized.Factor);
        json.Number("pieces", resized.Recipe?.Make?.Pieces);
        json.Number("pieceGrams", resized.Recipe?.Make?.PieceMass.Grams);
        json.Number("doughGrams", resized.After?.Dough.Grams);
        json.Number("doughBeforeGrams", resized.Before.Dough.Grams);
        json.WriteNumber("scaleGrams", resized.Scale.Grams);
        json.WriteString("text", text);
        json.Array("lines", resized.Lines, line => WriteLine(json, line));
        json.Array("makes", resized.Makes, make =>
        {
            json.WriteNumber("pieces", make.Pieces);
            json.WriteNumber("pieceGrams", make.PieceMass.Grams);
        });
        json.Array("choices", resized.Choices, choice => WriteChoice(json, choice));
        json.Array("fits", resized.Fits, fit => WriteFit(json, fit));
        json.Array("measures", resized.Measures, measure => WriteMeasure(json, measure));
        FindingsJson.WriteJudged(json, findings, voice);
    });

    private static void WriteLine(Utf8JsonWriter json, ResizedLine line)
    {
        json.WriteString("component", line.Component);
        json.WriteString("line", line.Line);
        json.WriteString("name", line.Name);
        json.WriteString("typed", line.Typed);
        json.WriteString("writtenAs", JsonText.Name(line.Form));
        json.WriteNumber("beforeGrams", line.Before.Grams);
        json.WriteNumber("exactGrams", line.Exact.Grams);
        json.WriteNumber("grams", line.After.Grams);
        json.WriteNumber("errorGrams", line.Error.Grams);
        json.Number("errorPercent", line.ErrorPercent?.Value);
    }

    private static void WriteChoice(Utf8JsonWriter json, WholeChoice choice)
    {
        json.WriteString("component", choice.Component);
        json.WriteString("line", choice.Line);
        json.WriteString("name", choice.Name);
        json.WriteNumber("oneGrams", choice.Piece.Grams);
        json.WriteNumber("needed", choice.Needed);
        json.Array("options", choice.Options, option =>
        {
            json.WriteNumber("take", option.Count);
            json.WriteNumber("grams", option.Mass.Grams);
            json.WriteStartObject("shift");
            json.WriteNumber("doughGrams", option.Shift.Dough.Grams);
            json.Number("trueWater", option.Shift.TrueWater);
            json.Number("trueSugar", option.Shift.TrueSugar);
            json.Number("trueFat", option.Shift.TrueFat);
            json.Number("hydration", option.Shift.Hydration);
            json.WriteEndObject();
            json.WriteNumber("wholeFactor", option.WholeFactor);
            json.WriteNumber("wholeDoughGrams", option.WholeDough.Grams);
        });
    }

    private static void WriteFit(Utf8JsonWriter json, Fit fit)
    {
        json.WriteString("what", JsonText.Name(fit.Kind));
        json.WriteString("verdict", JsonText.Name(fit.Verdict));
        json.WriteString("step", fit.Step);
        json.Number("heldBeforeGrams", fit.HeldBefore?.Grams);
        json.Number("holdsNowGrams", fit.HoldsNow?.Grams);
        json.Number("needsLitres", fit.Needs?.Litres);
        json.Number("hasLitres", fit.Has?.Litres);
        json.Number("neededCount", fit.Needed);
        json.Number("perTray", fit.PerTray);
        json.Number("thereCount", fit.There);
        json.Number("loads", fit.Loads);
    }

    private static void WriteMeasure(Utf8JsonWriter json, ResizedMeasure measure)
    {
        json.WriteString("step", measure.Step);
        json.WriteString("variant", measure.Variant);
        json.WriteBoolean("stands", measure.Stands);
        json.Number("measuredMinutes", measure.Time?.Minutes);
        json.Number("minutes", measure.NewTime?.Minutes);
        json.Number("minutesLow", measure.NewTimeLow?.Minutes);
        json.Number("minutesHigh", measure.NewTimeHigh?.Minutes);
        json.Number("measuredCelsius", measure.Temperature?.Celsius);
        json.Number("celsius", measure.NewTemperature?.Celsius);
        json.Number("celsiusLow", measure.NewTemperatureLow?.Celsius);
        json.Number("celsiusHigh", measure.NewTemperatureHigh?.Celsius);
    }
}

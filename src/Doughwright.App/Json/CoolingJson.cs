using System.Text.Json;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.App.Json;

/// <summary>What a loaf that cools after the oven comes to.</summary>
internal static class CoolingJson
{
    public static void Write(Utf8JsonWriter json, RehearsedStep step)
    {
        if (step.Cooling?.Invoke() is not { } cooled)
        {
            return;
        }

        json.WriteStartObject("cooling");
        json.WriteNumber("coreCelsius", cooled.Core.Likely.Celsius);
        json.WriteNumber("coreCelsiusLow", cooled.Core.Low.Celsius);
        json.Number("coreCelsiusHigh", cooled.Core.High?.Celsius);
        json.WriteNumber("loss", cooled.Loss.Likely.Value);
        json.WriteNumber("lossLow", cooled.Loss.Low.Value);
        json.Number("lossHigh", cooled.Loss.High?.Value);
        json.WriteNumber("airCelsius", cooled.Air.Celsius);
        json.WriteBoolean("inTin", cooled.InTin);
        json.WriteString("until", JsonText.Name(cooled.Until));
        json.WriteEndObject();
    }
}

using System.Text.Json;
using Doughwright.Engine.Baking;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.App.Json;

/// <summary>Ovens, their dials, and what is done to them in a bake.</summary>
internal static class OvenJson
{
    public static void WriteTraits(Utf8JsonWriter json, Kitchen kitchen)
    {
        var traits = kitchen.OvenTraits;
        json.WriteStartObject("ovenTraits");
        json.Number("hotterThanDialKelvins", traits.OffDial?.Kelvins);
        json.Number("heatsInMinutes", traits.HeatsIn?.Minutes);
        json.Number("recoversInMinutes", traits.RecoversIn?.Minutes);
        json.WriteString("steam", JsonText.Name(traits.Steam));
        json.WriteString("hearth", traits.Hearth is { } hearth ? JsonText.Name(hearth.Material) : null);
        json.Number("hearthMillimetres", traits.Hearth?.Thick?.Metres * 1000);
        json.WriteEndObject();
    }

    /// <summary>What belongs to a dial, within its object.</summary>
    public static void WriteDial(Utf8JsonWriter json, Dial dial)
    {
        WriteSetting(json, dial.Here);
        json.Array("others", dial.Others, other => WriteSetting(json, other));
        if (dial.Then is { } then)
        {
            json.WriteStartObject("then");
            json.WriteNumber("afterMinutes", then.After.Minutes);
            WriteDial(json, then.Dial);
            json.WriteEndObject();
        }
    }

    public static void WriteBake(Utf8JsonWriter json, RehearsedStep step)
    {
        if (step.Kind != StepKind.Bake)
        {
            return;
        }

        json.WriteString("on", JsonText.Name(step.On));
        json.Number("steamMinutes", step.Steam?.Minutes);
        json.Number("lidOffMinutes", step.LidOff?.Minutes);
    }

    private static void WriteSetting(Utf8JsonWriter json, DialSetting dial)
    {
        json.WriteString("mode", JsonText.Name(dial.Mode));
        json.WriteNumber("celsius", dial.Celsius);
        json.WriteNumber("fahrenheit", dial.Fahrenheit);
    }
}

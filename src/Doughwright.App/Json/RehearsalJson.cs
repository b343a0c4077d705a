using System.Text.Json;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Json;

/// <summary>The object of "rehearse".</summary>
internal static class RehearsalJson
{
    /// <param name="isKitchenChanged">Whether the kitchen is another than the one it is named after.</param>
    public static string Write(Stamp stamp, Rehearsal rehearsal, Judgement findings, Voice voice, bool isKitchenChanged = false) => JsonText.Of(json =>
    {
        stamp.WriteTo(json);
        json.WriteString("title", rehearsal.Recipe.Title);
        json.WriteBoolean("atHome", rehearsal.AtHome);
        WriteKitchen(json, rehearsal, isKitchenChanged);
        json.Number("totalMinutes", rehearsal.Total?.Likely.Minutes);
        json.Number("totalMinutesLow", rehearsal.Total?.Low.Minutes);
        json.Number("totalMinutesHigh", rehearsal.Total?.High?.Minutes);
        json.WriteNumber("handsMinutes", rehearsal.Hands.Minutes);
        json.Array("components", rehearsal.Components, component => WriteComponent(json, component));
        json.Array("solve", rehearsal.Solutions, solution => WriteSolution(json, solution));
        json.Array("steps", rehearsal.Steps, step => WriteStep(json, step, rehearsal, voice));
        PhotosJson.Write(json, rehearsal.Recipe);
        FindingsJson.WriteJudged(json, findings, rehearsal.Recipe, voice);
    });

    private static void WriteKitchen(Utf8JsonWriter json, Rehearsal rehearsal, bool isChanged)
    {
        var kitchen = rehearsal.Kitchen;
        json.WriteStartObject("kitchen");
        json.WriteString("name", kitchen.Name);
        json.WriteBoolean("changed", isChanged);
        json.WriteNumber("airCelsius", kitchen.Air.At(Duration.Zero).Celsius);
        if (!kitchen.Air.IsConstant)
        {
            json.Array("airProfile", kitchen.Air.Knots, knot =>
            {
                json.WriteNumber("fromMinutes", knot.From.Minutes);
                json.WriteNumber("celsius", knot.Air.Celsius);
            });
        }

        json.WriteNumber("altitudeMetres", kitchen.Altitude.Metres);
        json.WriteNumber("pressureKilopascals", rehearsal.Pressure.Kilopascals);
        json.WriteNumber("boilsCelsius", rehearsal.Boils.Celsius);
        json.WriteString("oven", JsonText.Name(kitchen.Oven));
        OvenJson.WriteTraits(json, kitchen);
        json.WriteNumber("trays", kitchen.Trays);
        json.WriteNumber("tapCelsius", kitchen.Tap.Celsius);
        json.WriteNumber("fridgeCelsius", kitchen.Fridge.Celsius);
        json.WriteNumber("ingredientsCelsius", kitchen.Shelf.Celsius);
        json.Number("proofCelsius", kitchen.ProofingPlace?.Celsius);
        json.WriteNumber("scaleGrams", kitchen.Scale.Grams);
        json.WriteEndObject();
    }

    private static void WriteComponent(Utf8JsonWriter json, RehearsedComponent component)
    {
        json.WriteString("id", component.Id);
        json.WriteString("kind", JsonText.Name(component.Kind));
        json.Number("mixedCelsius", component.Mixed?.Likely.Celsius);
        json.Number("mixedCelsiusLow", component.Mixed?.Low.Celsius);
        json.Number("mixedCelsiusHigh", component.Mixed?.High?.Celsius);
    }

    private static void WriteSolution(Utf8JsonWriter json, Solution solution)
    {
        json.Words("lines", solution.Lines);
        json.Number("celsius", solution.Warmth?.Likely.Celsius);
        json.Number("celsiusLow", solution.Warmth?.Low.Celsius);
        json.Number("celsiusHigh", solution.Warmth?.High?.Celsius);
        json.Array("meets", solution.Meets, meeting =>
        {
            json.WriteString("what", meeting.What);
            json.WriteNumber("celsius", meeting.Temperature.Celsius);
        });
        json.WriteBoolean("offered", solution.Offered);
        json.Number("iceGrams", solution.Ice?.Likely.Grams);
        json.Number("tradeRuleCelsius", solution.TradeRule?.Celsius);
    }

    private static void WriteStep(Utf8JsonWriter json, RehearsedStep step, Rehearsal rehearsal, Voice voice)
    {
        json.WriteString("id", step.Id);
        json.WriteString("kind", JsonText.Name(step.Kind));
        json.WriteString("name", StepName.Of(step, voice));
        json.WriteString("component", step.Component);
        json.WriteString("variant", step.Variant);
        json.WriteString("basis", JsonText.Name(step.Basis));
        json.Number("startMinutes", step.Start?.Minutes);
        json.Number("minutes", step.Time?.Likely.Minutes);
        json.Number("minutesLow", step.Time?.Low.Minutes);
        json.Number("minutesHigh", step.Time?.High?.Minutes);
        if (step.Kind == StepKind.Bake)
        {
            json.WriteString("minutesFrom", step.Time is null ? null : step.Basis != Basis.Computed ? "author" : step.AlongRadius is null ? "radius" : "section");
            json.Number("radiusMinutes", step.AlongRadius?.Minutes);
        }

        json.WriteNumber("handsMinutes", step.Hands.Minutes);
        json.Number("startCelsius", step.StartTemperature?.Celsius);
        json.Number("endCelsius", step.EndTemperature?.Celsius);
        if (step.SettlesAt is { } settles)
        {
            json.WriteNumber("settlesAtCelsius", settles.Celsius);
        }

        if (step.Ripe is { } ripe)
        {
            json.WriteNumber("ripeEarliestMinutes", ripe.Earliest.Minutes);
            json.Number("ripeLatestMinutes", ripe.Latest?.Minutes);
        }

        json.Number("growth", step.Growth);
        json.Number("homeMinutes", step.HomeTime?.Minutes);
        json.WriteString("cue", step.Cue);
        json.WriteString("words", step.Words is { } words ? LiveProse.Of(words, step.Id, rehearsal, voice) : null);
        json.Array("events", step.Events, happening =>
        {
            json.WriteString("what", happening.What);
            json.WriteNumber("afterMinutes", happening.After.Likely.Minutes);
            json.WriteNumber("afterMinutesLow", happening.After.Low.Minutes);
            json.Number("afterMinutesHigh", happening.After.High?.Minutes);
            json.WriteNumber("handsMinutes", happening.Hands.Minutes);
        });
        json.WriteStartObject("why");
        ReasonJson.Write(json, step.Why(), voice);
        json.WriteEndObject();
        if (step.Bake?.Invoke() is { } bake)
        {
            json.WriteStartObject("bake");
            WriteBake(json, bake);
            json.WriteEndObject();
        }

        CoolingJson.Write(json, step);
        if (step.Dial is { } dial)
        {
            json.WriteStartObject("dial");
            OvenJson.WriteDial(json, dial);
            json.WriteEndObject();
        }

        OvenJson.WriteBake(json, step);
    }

    private static void WriteBake(Utf8JsonWriter json, BakeTelling bake)
    {
        // Minutes may be those over a section; what comes out is not carried over to it.
        json.WriteString("from", "radius");
        json.WriteNumber("coreCelsius", bake.Core.Likely.Celsius);
        json.WriteNumber("coreCelsiusLow", bake.Core.Low.Celsius);
        json.Number("coreCelsiusHigh", bake.Core.High?.Celsius);
        json.WriteNumber("surfaceCelsius", bake.Surface.Likely.Celsius);
        json.WriteNumber("surfaceCelsiusLow", bake.Surface.Low.Celsius);
        json.Number("surfaceCelsiusHigh", bake.Surface.High?.Celsius);
        json.WriteNumber("loss", bake.Loss.Likely.Value);
        json.WriteNumber("lossLow", bake.Loss.Low.Value);
        json.Number("lossHigh", bake.Loss.High?.Value);
        json.WriteNumber("doneCoreCelsius", bake.DoneCore.Celsius);
        json.WriteNumber("coreMinutes", bake.CoreAfter.Minutes);
        json.WriteNumber("carriesToCelsius", bake.CarriesTo.Celsius);
        json.WriteNumber("carriesForMinutes", bake.CarriesFor.Minutes);
        json.Number("colourMinutes", bake.ColourAfter?.Minutes);
        json.WriteString("crust", bake.Crust is { } rank ? JsonText.Name(rank) : null);
    }
}

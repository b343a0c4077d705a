using System.Text.Json;
using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Json;

/// <summary>The objects of "swap": one swap with what it cost, or the swaps a recipe offers.</summary>
internal static class SwapJson
{
    public static string Write(
        Stamp stamp, Recipe recipe, Swapped swapped, string? text, IReadOnlyList<RehearsedStep> times, Judgement findings, Voice voice) => JsonText.Of(json =>
    {
        stamp.WriteTo(json);
        json.WriteString("title", recipe.Title);
        json.WriteString("text", text);
        WriteCost(json, swapped, voice);
        json.Array("times", times, step =>
        {
            json.WriteString("step", step.Id);
            json.Number("homeMinutes", step.HomeTime?.Minutes);
            json.Number("minutes", step.Time?.Likely.Minutes);
            json.Number("minutesLow", step.Time?.Low.Minutes);
            json.Number("minutesHigh", step.Time?.High?.Minutes);
        });
        FindingsJson.WriteJudged(json, findings, voice);
    });

    public static string WriteOffers(Stamp stamp, Recipe recipe, IReadOnlyList<SwapOffer> offers, Judgement findings, Voice voice) => JsonText.Of(json =>
    {
        stamp.WriteTo(json);
        json.WriteString("title", recipe.Title);
        json.Array("offers", offers, offer =>
        {
            json.WriteString("what", offer.Wish.What);
            json.WriteString("by", offer.Wish.IsWithout ? null : offer.Wish.By);
            json.WriteString("part", offer.Wish.Part);
            json.WriteString("tried", offer.Allowed?.Tried);
            json.WriteString("words", offer.Allowed?.Words ?? offer.Without?.Words);
            WriteCost(json, offer.Result, voice);
        });
        FindingsJson.WriteJudged(json, findings, recipe, voice);
    });

    private static void WriteCost(Utf8JsonWriter json, Swapped swapped, Voice voice)
    {
        json.WriteBoolean("refused", swapped.IsRefused);
        json.Array("lines", swapped.Lines, line =>
        {
            json.WriteString("component", line.Component);
            json.WriteString("id", line.Line);
            json.WriteString("change", JsonText.Name(line.Change));
            json.WriteString("nameBefore", line.NameBefore);
            json.Number("beforeGrams", line.Before?.Grams);
            json.WriteString("nameAfter", line.NameAfter);
            json.Number("afterGrams", line.After?.Grams);
        });
        json.Array("residuals", swapped.Residuals, residual =>
        {
            json.WriteString("component", residual.Component);
            json.Number("trueWater", residual.Water?.Value);
            json.Number("trueSugar", residual.Sugar?.Value);
            json.Number("trueFat", residual.Fat?.Value);
            json.Number("salt", residual.Salt?.Value);
        });
        json.Array("thirst", swapped.Thirst, thirst =>
        {
            json.WriteString("component", thirst.Component);
            json.WriteString("id", thirst.Line);
            json.WriteNumber("pointsLow", thirst.Low);
            json.WriteNumber("pointsHigh", thirst.High);
            json.WriteNumber("lowGrams", thirst.LowMass.Grams);
            json.WriteNumber("highGrams", thirst.HighMass.Grams);
        });
        WriteAllergens(json, swapped.Allergens);
        json.Array("buy", swapped.Buy, change =>
        {
            json.WriteString("name", change.Name);
            json.WriteString("ingredient", change.Ingredient);
            json.Number("beforeGrams", change.Before?.Grams);
            json.Number("afterGrams", change.After?.Grams);
        });
        FindingsJson.WriteList(json, swapped.Consequences, voice, "consequences");
    }

    private static void WriteAllergens(Utf8JsonWriter json, AllergenChange allergens)
    {
        json.WriteStartObject("allergens");
        json.Words("before", allergens.Before);
        json.Words("after", allergens.After);
        json.Words("gained", allergens.Gained);
        json.Words("lost", allergens.Lost);
        json.Words("byLabel", allergens.ByLabel);
        json.WriteEndObject();
    }
}

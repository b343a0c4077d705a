using System.Text.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Json;

/// <summary>The object of "formula".</summary>
internal static class FormulaJson
{
    public static string Write(Stamp stamp, Formula formula, Judgement findings, Voice voice) => JsonText.Of(json =>
    {
        stamp.WriteTo(json);
        json.WriteString("title", formula.Recipe.Title);
        json.WriteString("region", formula.Recipe.RegionCode);
        json.Number("pieces", formula.Recipe.Make?.Pieces);
        json.Number("pieceGrams", formula.Recipe.Make?.PieceMass.Grams);
        json.WriteNumber("flourGrams", formula.Flour.Grams);
        json.WriteNumber("doughGrams", formula.Dough.Grams);
        WritePercent(json, formula.Percent);
        json.Array("components", formula.Components, component => WriteComponent(json, component));
        WriteBudget(json, "water", formula.Water);
        WriteBudget(json, "sugar", formula.Sugar);
        WriteBudget(json, "fat", formula.Fat);
        WriteYeast(json, formula.Yeast);
        json.Array("buy", formula.Buy, item => WriteBuy(json, item, voice));
        PhotosJson.Write(json, formula.Recipe);
        FindingsJson.WriteJudged(json, findings, formula.Recipe, voice);
    });

    private static void WritePercent(Utf8JsonWriter json, FormulaPercents percent)
    {
        json.WriteStartObject("percent");
        json.Number("hydration", percent.Hydration?.Value);
        json.Number("trueWater", percent.TrueWater?.Value);
        json.Number("salt", percent.Salt?.Value);
        json.Number("sugar", percent.Sugar?.Value);
        json.Number("trueSugar", percent.TrueSugar?.Value);
        json.Number("fat", percent.Fat?.Value);
        json.Number("trueFat", percent.TrueFat?.Value);
        json.Number("freshYeast", percent.FreshYeast?.Value);
        json.Number("scaldedFlour", percent.ScaldedFlour?.Value);
        json.Number("prefermentedFlour", percent.PrefermentedFlour?.Value);
        json.WriteEndObject();
    }

    private static void WriteComponent(Utf8JsonWriter json, ComponentFormula component)
    {
        json.WriteString("id", component.Id);
        json.WriteString("name", component.Name);
        json.WriteString("kind", JsonText.Name(component.Kind));
        json.WriteNumber("grams", component.Mass.Grams);
        json.WriteNumber("flourGrams", component.Flour.Grams);
        json.Number("waterGrams", component.Water?.Grams);
        json.Number("waterPercent", component.WaterPercent?.Value);
        json.WriteNumber("shareInDough", component.ShareInDough);
        json.Array("lines", component.Lines, line => WriteLine(json, line));
    }

    private static void WriteLine(Utf8JsonWriter json, LineFormula line)
    {
        json.WriteString("id", line.Id);
        json.WriteString("name", line.Name);
        json.WriteString("role", line.Role is { } role ? JsonText.Name(role) : null);
        json.Number("grams", line.IsMassKnown ? line.Mass.Grams : null);
        json.WriteString("typed", line.Source.Typed);
        WriteHousehold(json, line.Source.Household);
        json.Number("waterGrams", line.Water?.Grams);
        json.Number("percent", line.Percent?.Value);
        json.Number("overallPercent", line.OverallPercent?.Value);
        json.WriteString("ingredient", line.Ingredient?.Id);
        json.WriteString("uses", line.UsesComponent);
    }

    private static void WriteHousehold(Utf8JsonWriter json, Household? household)
    {
        if (household is null)
        {
            json.WriteNull("household");
            return;
        }

        json.WriteStartObject("household");
        json.WriteNumber("amount", household.Amount);
        json.WriteString("unit", household.Unit);
        json.WriteEndObject();
    }

    private static void WriteBudget(Utf8JsonWriter json, string name, Budget budget)
    {
        json.WriteStartObject(name);
        json.Number("totalGrams", budget.Total?.Grams);
        json.WriteNumber("atLeastGrams", budget.AtLeast.Grams);
        json.Number("atMostGrams", budget.AtMost?.Grams);
        json.Array("from", budget.Shares, share =>
        {
            json.WriteString("component", share.Component);
            json.WriteString("line", share.Line);
            json.Number("grams", share.Mass?.Grams);
        });
        json.WriteEndObject();
    }

    private static void WriteYeast(Utf8JsonWriter json, YeastEquivalents? yeast)
    {
        if (yeast is null)
        {
            json.WriteNull("yeast");
            return;
        }

        json.WriteStartObject("yeast");
        json.WriteNumber("freshGrams", yeast.Fresh.Grams);
        json.WriteNumber("activeDryGrams", yeast.ActiveDry.Grams);
        json.WriteNumber("instantGrams", yeast.Instant.Grams);
        json.WriteEndObject();
    }

    private static void WriteBuy(Utf8JsonWriter json, BuyItem item, Voice voice)
    {
        json.WriteString("name", item.Name);
        json.WriteString("ingredient", item.Ingredient?.Id);
        json.Number("grams", item.ToBuy?.Grams);
        json.WriteNumber("preparedGrams", item.Used.Grams);
        json.Number("pieces", item.Pieces);
        json.Number("togetherFromEggs", item.TogetherFromEggs);
        json.Number("eggsInAll", item.Eggs?.All);
        json.WriteString("note", BuyWords.Note(item, voice));
        json.Array("steps", item.Steps, step =>
        {
            json.WriteString("step", JsonText.Name(step.Step));
            json.Number("factor", step.Factor);
            json.WriteString("basis", step.Weighed ? "weighed" : "table");
            json.WriteString("source", step.Source);
        });
    }
}

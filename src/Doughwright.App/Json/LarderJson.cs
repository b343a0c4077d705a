using System.Text.Json;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Ingredients;
using Doughwright.Engine.Ingredients;

namespace Doughwright.App.Json;

/// <summary>The object of "larder".</summary>
internal static class LarderJson
{
    public static string Holdings(OwnOfBook own) => JsonText.Of(json =>
    {
        WriteHoldings(json, own);
        json.WriteNull("words");
        json.WriteNull("match");
        json.Array("hits", Array.Empty<LarderHit>(), _ => { });
    });

    public static string Write(LarderAsked asked) => JsonText.Of(json =>
    {
        WriteHoldings(json, asked.Own);
        json.WriteString("words", asked.Words);
        json.WriteStartObject("match");
        json.WriteString("kind", JsonText.Name(asked.Match.Kind));
        json.WriteString("ingredient", asked.Match.Ingredient?.Id);
        json.Words("candidates", asked.Match.Candidates.Select(row => row.Id));
        json.WriteEndObject();
        json.Array("hits", asked.Hits, hit => WriteHit(json, asked, hit));
    });

    private static void WriteHoldings(Utf8JsonWriter json, OwnOfBook own)
    {
        var larder = Larder.Shipped;
        json.WriteString("larder", own.Over(larder).Version);
        json.WriteNumber("withFigures", larder.Ingredients.Count(row => row.HasFigures));
        json.WriteNumber("byNameOnly", larder.Ingredients.Count(row => !row.HasFigures));
        json.Array("sources", larder.Ingredients.CountBy(row => (row.Evidence.Source, row.Evidence.Obtained)), each =>
        {
            json.WriteString("source", each.Key.Source);
            json.WriteString("obtained", each.Key.Obtained);
            json.WriteNumber("rows", each.Value);
        });
        json.WriteString("book", own.Book);
        json.Array("own", own.All, paper =>
        {
            json.WriteString("paper", paper.Name);
            json.WriteString("name", paper.Title);
            json.WriteBoolean("understood", paper.Own is not null);
            json.WriteString("ingredient", paper.Own?.Ingredient.Id);
        });
    }

    private static void WriteHit(Utf8JsonWriter json, LarderAsked asked, LarderHit hit)
    {
        var (larder, row) = (asked.Larder, hit.Ingredient);
        json.WriteString("ingredient", row.Id);
        json.WriteString("name", row.Name);
        json.WriteString("calledHere", hit.Name);
        json.WriteNumber("likeness", hit.Likeness);
        json.WriteString("role", JsonText.Name(row.Role));
        json.WriteBoolean("hasFigures", row.HasFigures);
        WriteComposition(json, row.Composition);
        json.Array("measures", larder.MeasuresOf(row), measure => WriteMeasure(json, measure));
        json.Number("pieceGrams", row.Piece?.Grams);
        WritePreparation(json, larder.PreparationOf(row));
        json.WriteBoolean("allergensKnown", row.AllergensKnown);
        WriteAllergens(json, "allergensEuropean", row.Allergens);
        WriteAllergens(json, "allergensUnitedStates", row.AllergensUnitedStates);
        json.WriteString("note", hit.Note);
        WriteEvidence(json, row.Evidence);
        WriteOwn(json, asked.Own.PaperOf(row));
    }

    private static void WriteOwn(Utf8JsonWriter json, OwnPaper? paper)
    {
        if (paper?.Own is not { } own)
        {
            json.WriteNull("own");
            return;
        }

        json.WriteStartObject("own");
        json.WriteString("paper", paper.Name);
        json.WriteString("lot", own.Lot);
        json.Number("absorptionPercent", own.Absorption?.Share.Value);
        json.WriteString("absorptionHow", own.Absorption?.Words);
        json.WriteEndObject();
    }

    private static void WriteComposition(Utf8JsonWriter json, Composition composition)
    {
        json.WriteStartObject("composition");
        json.Number("water", composition.Water);
        json.Number("protein", composition.Protein);
        json.Number("fat", composition.Fat);
        json.Number("carbohydrate", composition.Carbohydrate);
        json.Number("sugars", composition.Sugars);
        json.Number("fibre", composition.Fibre);
        json.Number("ash", composition.Ash);
        json.Number("salt", composition.Salt);
        json.Number("lactose", composition.Lactose);
        json.Number("alcohol", composition.Alcohol);
        json.WriteEndObject();
    }

    private static void WriteMeasure(Utf8JsonWriter json, Measure measure)
    {
        json.WriteString("unit", measure.Unit);
        json.WriteNumber("grams", measure.Mass.Grams);
        json.Words("regions", measure.Regions.Select(region => JsonText.Name(region)));
        WriteEvidence(json, measure.Evidence);
    }

    private static void WritePreparation(Utf8JsonWriter json, Preparation? preparation)
    {
        if (preparation is null)
        {
            json.WriteNull("preparation");
            return;
        }

        json.WriteStartObject("preparation");
        json.WriteString("step", JsonText.Name(preparation.Step));
        json.WriteString("from", preparation.From);
        json.Number("factor", preparation.Factor);
        json.WriteString("source", preparation.Source);
        json.WriteString("note", preparation.Note);
        json.WriteEndObject();
    }

    private static void WriteAllergens(Utf8JsonWriter json, string name, IReadOnlyList<string> codes) => json.Array(name, codes, code =>
    {
        json.WriteString("name", AllergenNames.Of(code));
        json.WriteBoolean("dependsOnSupplier", AllergenNames.Depends(code));
    });

    private static void WriteEvidence(Utf8JsonWriter json, Evidence evidence)
    {
        json.WriteStartObject("evidence");
        json.WriteString("source", evidence.Source);
        json.WriteString("record", evidence.Record);
        json.WriteString("obtained", evidence.Obtained);
        json.WriteString("date", evidence.Date);
        json.WriteString("note", evidence.Note);
        json.WriteEndObject();
    }
}

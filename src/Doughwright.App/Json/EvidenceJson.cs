using System.Text.Json;
using Doughwright.App.Commands;
using Doughwright.Engine.Cases;
using Doughwright.Engine.Ingredients;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Json;

/// <summary>{ form, stamp, cases, findings }: one entry for every series of a case.</summary>
internal static class EvidenceJson
{
    public static string Write(EvidenceRun run, Voice voice) => JsonText.Of(json =>
    {
        new Stamp(run.State, Stamp.EngineVersion, Larder.Shipped.Version, "none").WriteTo(json);
        json.Array("cases", run.Series, held => WriteSeries(json, held.Case, held.Result));
        FindingsJson.WriteList(json, [.. run.Findings], voice);
    });

    private static void WriteSeries(Utf8JsonWriter json, PublishedCase published, SeriesResult result)
    {
        json.WriteString("id", published.Id);
        json.WriteString("title", published.Title);
        json.WriteString("source", SourceWords.Of(published.Source));
        json.WriteString("kind", published.Kind);
        json.WriteString("read", JsonText.Name(published.Source.Read));
        json.WriteBoolean("fitted", published.Fitted);
        json.WriteBoolean("evidence", published.IsEvidence);
        json.WriteString("quantity", result.Series.Quantity);
        json.WriteString("unit", result.Series.Unit);
        json.WriteNumber("points", result.Series.Points.Count);
        json.Number("rmse", result.RootMeanSquare);
        json.Number("bias", result.Bias);
        json.Number("maxError", result.MaxError);
        if (result.Within is { } within)
        {
            json.WriteBoolean("within", within);
        }
        else
        {
            json.WriteNull("within");
        }

        json.WriteNumber("pointsWithin", result.PointsWithin);
        json.WriteNumber("pointsWithRange", result.PointsWithRange);
        json.WriteNumber("pointsInRange", result.PointsInRange);
        json.WriteString("along", result.Series.Along);
        json.WriteString("alongUnit", result.Series.AlongUnit);
        json.Array("figures", result.Points, point =>
        {
            json.Number("at", point.Measured.At);
            json.WriteNumber("measured", point.Measured.Value);
            json.WriteNumber("measuredLow", point.Measured.Low);
            json.WriteNumber("measuredHigh", point.Measured.High);
            json.WriteNumber("tolerance", point.Measured.Tolerance);
            json.Number("computed", point.Computed);
            json.Number("low", point.Low);
            json.Number("high", point.High);
            json.WriteBoolean("within", point.Within);
        });
    }
}

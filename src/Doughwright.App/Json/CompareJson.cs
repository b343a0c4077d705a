using System.Text.Json;
using Doughwright.App.Commands;
using Doughwright.App.Text.Sides;
using Doughwright.Engine.Rehearsals.Differences;
using Doughwright.Engine.Sides;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Json;

/// <summary>The object of "compare".</summary>
internal static class CompareJson
{
    /// <param name="causes">What moved each figure; null where that is not asked for.</param>
    public static string Write(Stamp first, Stamp second, ComparedTexts compared, Causes? causes, Voice voice) => JsonText.Of(json =>
    {
        first.WriteTo(json);
        WriteSide(json, "first", first, compared.First.Title);
        WriteSide(json, "second", second, compared.Second.Title);
        json.WriteString("kitchen", compared.Kitchen.Name);
        json.WriteBoolean("kitchenChanged", compared.IsKitchenChanged);
        json.WriteString("measuredBy", JsonText.Name(compared.Consequences.By));
        var words = new SideWords(compared.First, compared.Second, voice);
        json.Array("differences", words.Rows(compared.Differences), row => WriteRow(json, row));
        json.Array("formula", compared.Consequences.Formulas, difference =>
        {
            json.WriteString("figure", JsonText.Name(difference.Figure));
            json.Number("first", difference.First);
            json.Number("second", difference.Second);
            json.Number("by", difference.By);
            WriteCauses(json, causes?.Of(difference.Figure));
        });
        json.Array("run", compared.Consequences.Run, difference =>
        {
            WriteRun(json, difference);
            WriteCauses(json, causes?.Of(difference.Figure));
        });
    });

    private static void WriteSide(Utf8JsonWriter json, string side, Stamp stamp, string title)
    {
        json.WriteStartObject(side);
        json.WriteString("title", title);
        json.WriteString("state", stamp.State);
        json.WriteEndObject();
    }

    private static void WriteCauses(Utf8JsonWriter json, IReadOnlyList<Cause>? causes)
    {
        if (causes is null)
        {
            json.WriteNull("causes");
            return;
        }

        json.Array("causes", causes, cause =>
        {
            json.WriteString("aspect", cause.Difference is { } known ? JsonText.Name(known.Aspect) : null);
            json.WriteString("part", cause.Difference?.Part);
            json.WriteString("line", cause.Difference?.Line);
            json.WriteString("step", cause.Difference?.Step);
            json.WriteString("item", cause.Difference?.Item);
            json.Number("by", cause.By);
        });
    }

    private static void WriteRow(Utf8JsonWriter json, SideRow row)
    {
        var difference = row.Difference;
        json.WriteString("aspect", JsonText.Name(difference.Aspect));
        json.WriteString("part", difference.Part);
        json.WriteString("line", difference.Line);
        json.WriteString("step", difference.Step);
        json.WriteString("item", difference.Item);
        json.WriteString("what", row.What);
        json.WriteString("first", difference.First is null ? null : row.First.Line);
        json.WriteString("second", difference.Second is null ? null : row.Second.Line);
        json.WriteString("unit", (difference.FirstNumber ?? difference.SecondNumber) is { } number ? JsonText.Name(number.Unit) : null);
        json.Number("firstValue", difference.FirstNumber?.Value);
        json.Number("secondValue", difference.SecondNumber?.Value);
        json.Number("by", difference.By);
    }

    private static void WriteRun(Utf8JsonWriter json, Difference difference)
    {
        json.WriteString("figure", JsonText.Name(difference.Figure.Kind));
        json.WriteString("of", difference.Figure.Of);
        json.Number("first", difference.First);
        json.Number("second", difference.Second);
        json.Number("by", difference.By);
        json.WriteString("firstUnknown", difference.FirstUnknown is { } one ? JsonText.Name(one) : null);
        json.WriteString("secondUnknown", difference.SecondUnknown is { } other ? JsonText.Name(other) : null);
    }
}

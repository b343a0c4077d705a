using System.Text.Json;
using System.Text.RegularExpressions;

namespace Doughwright.App.Tests.Json;

/// <summary>docs/json.md names every field that the schemas hold.</summary>
public class JsonDocTests
{
    public static TheoryData<string> Schemas =>
        [.. Directory.EnumerateFiles(House.PathTo("tests", "data", "schema"), "*.json").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Schemas))]
    public void EveryField_IsExplained(string schema)
    {
        using var json = JsonDocument.Parse(File.ReadAllText(House.PathTo("tests", "data", "schema", schema)));
        var page = File.ReadAllText(House.PathTo("docs", "json.md"));
        var missing = Fields(json.RootElement).Distinct().Where(field => !Regex.IsMatch(page, $@"`{field}`|\b{field}\b")).ToList();
        Assert.Empty(missing);
    }

    private static IEnumerable<string> Fields(JsonElement schema)
    {
        if (schema.ValueKind == JsonValueKind.Array)
        {
            return schema.EnumerateArray().SelectMany(Fields);
        }

        if (schema.ValueKind != JsonValueKind.Object)
        {
            return [];
        }

        var own = schema.TryGetProperty("properties", out var properties) && properties.ValueKind == JsonValueKind.Object
            ? properties.EnumerateObject().Select(property => property.Name)
            : [];
        return own.Concat(schema.EnumerateObject().SelectMany(property => Fields(property.Value)));
    }
}

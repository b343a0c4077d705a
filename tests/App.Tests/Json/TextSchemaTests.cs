using System.Text.Json.Nodes;
using Json.Schema;
using YamlDotNet.RepresentationModel;

namespace Doughwright.App.Tests.Json;

/// <summary>The schema that editors use knows the same keys and words as the reader. The tree comes from a general YAML reader.</summary>
public class TextSchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(File.ReadAllText(House.PathTo("docs", "schema", "recipe-text.json")));

    public static TheoryData<string> SoundTexts => [House.PotatoRolls, .. Directory
        .EnumerateFiles(House.PathTo("tests", "data", "texts"), "*.yaml")
        .Where(file => !file.Contains("faults", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(SoundTexts))]
    public void SoundText_FitsTheSchema(string file) => Assert.True(Fits(File.ReadAllText(file)));

    [Theory]
    [InlineData("fridge: 5 C", "fridgge: 5 C")]
    [InlineData("oven: fan", "oven: gas")]
    [InlineData("sugar: 30 g", "sugar: 30")]
    [InlineData("way: by hand", "way: by feet")]
    [InlineData("hands: 12 min", "hands: 12")]
    [InlineData("doughwright: 1", "doughwright: 2")]
    public void TextWithASlip_DoesNotFit(string sound, string slip) =>
        Assert.False(Fits(File.ReadAllText(House.PotatoRolls).Replace(sound, slip, StringComparison.Ordinal)));

    private static bool Fits(string text)
    {
        var yaml = new YamlStream();
        yaml.Load(new StringReader(text));
        return Schema.Evaluate(System.Text.Json.JsonSerializer.SerializeToElement(Tree(yaml.Documents[0].RootNode))).IsValid;
    }

    private static JsonNode? Tree(YamlNode node) => node switch
    {
        YamlMappingNode mapping => new JsonObject(mapping.Children.Select(pair => KeyValuePair.Create(((YamlScalarNode)pair.Key).Value!, Tree(pair.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(Tree)]),
        _ => JsonValue.Create(((YamlScalarNode)node).Value),
    };
}

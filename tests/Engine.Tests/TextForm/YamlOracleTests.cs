using System.Text;
using Doughwright.Engine.TextForm;
using YamlDotNet.RepresentationModel;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>Every sound text is YAML, and a general YAML parser (YamlDotNet) reads it to the same tree, all scalars being words.</summary>
public class YamlOracleTests
{
    public static TheoryData<string> SoundTexts => new(Texts.Sound);

    [Theory]
    [MemberData(nameof(SoundTexts))]
    public void SoundText_ReadByAGeneralParser_GivesTheSameTree(string path) => AssertSameTree(Texts.Read(path));

    [Theory]
    [MemberData(nameof(SoundTexts))]
    public void NormalisedText_ReadByAGeneralParser_GivesTheSameTree(string path) =>
        AssertSameTree(TreeReader.Read(Texts.Read(path)).Document!.Normalised());

    [Theory]
    [InlineData("a: b\n")]
    [InlineData("a: 'it''s' # why\n")]
    [InlineData("\"a: b\": \"say \\\"yes\\\" \\\\ no\"\n")]
    [InlineData("# first\na: b #not a comment#\n# last\n")]
    [InlineData("a:\n  - b\n  - 12:30\n\n  # between\n  - -5 C\nb: no\n")]
    [InlineData("a: |\n  one\n\n    two: [x]\n  # three\n\nb: |\n  four\n")]
    [InlineData("a: |\n\n  after an empty line\nb: c\n")]
    [InlineData("a: b\r\nc:\r\n  d: |\r\n    e\r\n")]
    [InlineData("\ufeffa: b\n")]
    [InlineData("a : b\nc: ?d\ne: :f\ng: -h\n")]
    [InlineData("a: x [b] {c} & * ! | > % @ `\n")]
    [InlineData("a: café – 21 °C\n")]
    [InlineData("\"a *b\": c\nd * e: f\n")]
    [InlineData("a:    wide   words   \nb: c")]
    public void PieceOfTheForm_ReadByAGeneralParser_GivesTheSameTree(string text) => AssertSameTree(text);

    internal static void AssertSameTree(string text)
    {
        var (document, log) = TreeReader.Read(text);
        Assert.Empty(log.Findings);
        var yaml = new YamlStream();
        yaml.Load(new StreamReader(new MemoryStream(Encoding.UTF8.GetBytes(text))));
        Assert.Equal(Picture(yaml.Documents.Single().RootNode), Picture(document!.Root));
    }

    private static string Picture(YamlNode node) => node switch
    {
        YamlMappingNode mapping =>
            "{" + string.Join(",", mapping.Children.Select(child => Picture(child.Key) + "=" + Picture(child.Value))) + "}",
        YamlSequenceNode list => "[" + string.Join(",", list.Children.Select(Picture)) + "]",
        YamlScalarNode scalar => $"<{scalar.Value}>",
        _ => throw new InvalidOperationException(),
    };

    private static string Picture(TextNode node) => node switch
    {
        TextMapping mapping => "{" + string.Join(",", mapping.Entries.Select(entry => $"<{entry.Key}>=" + Picture(entry.Value))) + "}",
        TextList list => "[" + string.Join(",", list.Items.Select(item => Picture(item.Value))) + "]",
        TextScalar scalar => $"<{scalar.Text}>",
        _ => throw new InvalidOperationException(),
    };
}

using System.Text.RegularExpressions;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>Every example of docs/text-form.md is read, and means something without a finding.</summary>
public partial class DocumentedFormTests
{
    private static readonly string Page = Texts.Read("docs/text-form.md");

    public static TheoryData<string, string> Examples
    {
        get
        {
            var examples = new TheoryData<string, string>();
            foreach (Match block in Fenced().Matches(Page))
            {
                examples.Add(block.Groups[1].Value.Trim(), block.Groups[2].Value);
            }

            return examples;
        }
    }

    [Fact]
    public void Page_HasExamples() => Assert.True(Examples.Count >= 6);

    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_IsSound(string what, string text)
    {
        if (text.Contains("kitchen:", StringComparison.Ordinal))
        {
            Assert.Empty(KitchenText.Read(text).Findings);
            return;
        }

        var reading = RecipeText.Read(Whole(what, text));
        Assert.Empty(reading.Findings);
        var written = RecipeText.Write(reading.Recipe!);
        Assert.Equal(written, RecipeText.Write(RecipeText.Read(written).Recipe!));
    }

    [Fact]
    public void EveryKindAndWord_IsOnThePage()
    {
        string[] words =
        [
            .. EnumWords<ComponentKind>.All, .. EnumWords<StepKind>.All, .. EnumWords<MixingWay>.All, .. EnumWords<Where>.All,
            .. EnumWords<Cover>.All, .. EnumWords<VesselMaterial>.All, .. EnumWords<VesselShape>.All,
            .. EnumWords<Doughwright.Engine.Ingredients.Role>.All, .. KitchenSection.Keys,
            .. StepKeys.All, .. OwnSection.Keys, .. Engine.Ingredients.AllergenNames.Codes.Select(code => code.Replace('-', ' ')),
        ];
        Assert.All(words, word => Assert.Contains(word, Page, StringComparison.Ordinal));
    }

    /// <summary>A heading of its own for every key of a recipe.</summary>
    [Fact]
    public void EveryKeyOfARecipe_HasItsPlaceOnThePage_InTheOrderOfTheText()
    {
        string[] keys =
        [
            RecipeText.Title, RecipeText.Region, RecipeText.Make, RecipeText.Words, RecipeText.Home, RecipeText.Tools, RecipeText.Own, RecipeText.Parts,
            RecipeText.Steps, RecipeText.Without, RecipeText.Swaps, RecipeText.Keeping, RecipeText.Accepted,
        ];
        var places = keys.Select(key => Page.IndexOf($"\n## {key}\n", StringComparison.Ordinal)).ToArray();
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void EveryUnit_IsOnThePage() =>
        Assert.All(
            Enum.GetValues<QuantityKind>().Except([QuantityKind.Percent, QuantityKind.Power]),
            kind => Assert.Contains($"| {QuantityText.UnitsOf(kind)}", Page, StringComparison.Ordinal));

    [Fact]
    public void QuantitiesOnThePage_AreReadOrRefusedAsItSays()
    {
        foreach (var refused in new[] { "010 g", "7,5 g", "12:30", "7", "1/2 lb", "-50 g" })
        {
            Assert.Contains($"`{refused}`", Page, StringComparison.Ordinal);
            Assert.False(QuantityText.TryMass(refused).Ok);
        }
    }

    private const string Head = "doughwright: 1\ntitle: Example\n";

    private static string Whole(string what, string text) => what switch
    {
        "" => text,
        "home" => $"{Head}home:\n{Indented(text, 1)}parts:\n  dough:\n    flour: 100 g\n",
        "parts" => $"{Head}home:\n  air: 21 C\nparts:\n{Indented(text, 1)}",
        "whole" => $"{Head}home:\n  air: 21 C\nparts:\n  dough:\n    flour: 100 g\n{text}",
        "lines" => $"{Head}home:\n  air: 21 C\nparts:\n  dough:\n{Indented(text, 2)}",
        "region US" or "region AU" => $"{Head}{what.Replace(" ", ": ")}\nhome:\n  air: 21 C\nparts:\n  dough:\n{Indented(text, 2)}",
        "mixed" => $"{Head}home:\n  air: 21 C\nparts:\n  dough:\n    flour: 100 g\n    water: 60 g\n    yeast: 1 g\n    salt: 2 g\n    butter: 5 g\nsteps:\n  example:\n{Indented(text, 2)}",
        "step" => $"{Head}home:\n  air: 21 C\nparts:\n  dough:\n    flour: 100 g\nsteps:\n  example:\n{Indented(text, 2)}",
        "ripening" => $"{Head}home:\n  air: 21 C\nparts:\n  poolish:\n    kind: preferment\n    strong white flour: 100 g\n    water: 100 g\n    instant yeast: 0.1 g\n"
            + $"  dough:\n    poolish: all of it\n    strong white flour: 100 g\n    salt: 2 g\nsteps:\n  example:\n{Indented(text, 2)}",
        _ => throw new InvalidOperationException($"An example of an unknown kind: {what}"),
    };

    private static string Indented(string text, int levels) =>
        string.Concat(text.TrimEnd('\n').Split('\n').Select(line => (line.Length == 0 ? "" : new string(' ', 2 * levels) + line) + "\n"));

    [GeneratedRegex(@"^```yaml([^\n]*)\n(.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fenced();
}

using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Remedies;

/// <summary>A step that ends when it is ripe is told only what is wanting of it, and one way out gives it that.</summary>
public class RipeOfWhatTests
{
    private const string Rest = "    name: Ripen overnight\n    kind: rest\n";
    private const string Part = "  poolish:\n    kind: preferment\n";

    private static readonly string Loaf = Texts.Read("demo/recipes/hearth-loaf.yaml");

    private static string With(params (string Piece, string Instead)[] changes)
    {
        var text = Loaf;
        foreach (var (piece, instead) in changes)
        {
            Assert.Contains(piece, text, StringComparison.Ordinal);
            text = text.Replace(piece, instead, StringComparison.Ordinal);
        }

        return text;
    }

    private static (string, string) Step(string kind) => (Rest, Rest.Replace("rest", kind, StringComparison.Ordinal));

    private static (string, string) PartOf(string kind) => (Part, Part.Replace("preferment", kind, StringComparison.Ordinal));

    public static TheoryData<string, string> Wanting => new()
    {
        { With(Step("bulk")), "ripe-needs-rest" },
        { With(PartOf("dough")), "ripe-needs-preferment" },
        { With(Step("bulk"), PartOf("soaker")), "ripe-without-preferment" },
    };

    [Theory]
    [MemberData(nameof(Wanting))]
    public void WhatIsWanting_IsTold_AndGivenInOneGo(string text, string kind)
    {
        var recipe = RecipeText.Read(text).Recipe!;
        var told = Assert.Single(Ripe(recipe));
        Assert.Equal((kind, "steps.ripen"), (told.Kind, told.Place));
        var changed = Assert.Single(Engine.Remedies.Remedies.For(told, recipe)).CarryOut(text);
        Assert.Empty(Ripe(RecipeText.Read(changed).Recipe!));
        Assert.Equal(RecipeText.Write(RecipeText.Read(Loaf).Recipe!), RecipeText.Write(RecipeText.Read(changed).Recipe!));
    }

    /// <summary>What goes into nothing can be no preferment: of the dough itself only its end can be another.</summary>
    [Fact]
    public void DoughThatIsToRipen_EndsByItsCue_AndIsOfferedNoOtherKind()
    {
        var text = With(("    ends: at 1.8 times its volume\n", "    ends: ripe, about 3 h\n"));
        var recipe = RecipeText.Read(text).Recipe!;
        var told = Assert.Single(Ripe(recipe));
        Assert.Equal("ripe-without-preferment", told.Kind);
        var changed = Assert.Single(Engine.Remedies.Remedies.For(told, recipe)).CarryOut(text);
        Assert.Equal(text.Replace("ends: ripe, about 3 h", "ends: by its cue, about 3 h", StringComparison.Ordinal), changed);
    }

    private static IEnumerable<Finding> Ripe(Recipe recipe) => RecipeChecks.Of(recipe).Where(finding => finding.Kind.StartsWith("ripe-", StringComparison.Ordinal));
}

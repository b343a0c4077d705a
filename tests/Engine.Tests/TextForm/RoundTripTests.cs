using CsCheck;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

public class RoundTripTests
{
    [Fact]
    public void Recipe_WrittenAndRead_IsTheSame() => RecipeGen.Recipe.Sample(recipe =>
    {
        var text = RecipeText.Write(recipe);
        var reading = RecipeText.Read(text);
        Assert.DoesNotContain(reading.Findings, finding => finding.NotUnderstood);
        Assert.Equal(RecipePicture.Of(recipe), RecipePicture.Of(reading.Recipe));
        Assert.Equal(text, RecipeText.Write(reading.Recipe!));
    });

    [Fact]
    public void WrittenRecipe_IsYaml() => RecipeGen.Recipe.Sample(recipe => YamlOracleTests.AssertSameTree(RecipeText.Write(recipe)));

    [Fact]
    public void Kitchen_WrittenAndRead_IsTheSame() => RecipeGen.Kitchen.Sample(kitchen =>
    {
        var text = KitchenText.Write(kitchen);
        var reading = KitchenText.Read(text);
        Assert.Empty(reading.Findings);
        Assert.Equal(RecipePicture.Of(kitchen), RecipePicture.Of(reading.Kitchen));
        Assert.Equal(text, KitchenText.Write(reading.Kitchen!));
    });

    [Fact]
    public void StateId_IsTheSameForTheSameRecipeHoweverWritten()
    {
        var untidy = "# mine\n" + Texts.PotatoRolls.Replace("tap: 12 C", "tap:   12 °C   # in January").Replace("105 min", "1 h 45 min");
        Assert.Equal(StateId.Of(RecipeText.Read(Texts.PotatoRolls).Recipe!), StateId.Of(RecipeText.Read(untidy).Recipe!));
    }

    [Fact]
    public void StateId_ChangesWithAGram() => Assert.NotEqual(
        StateId.Of(RecipeText.Read(Texts.PotatoRolls).Recipe!),
        StateId.Of(RecipeText.Read(Texts.PotatoRollsWith("salt: 7 g", "salt: 8 g")).Recipe!));

    /// <summary>The value for "abc" is the example of the standard (FIPS 180-4, from memory).</summary>
    [Fact]
    public void StateId_IsSha256() =>
        Assert.Equal("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", StateId.OfText("abc"));

    [Fact]
    public void Comments_StayWhereTheyStood()
    {
        const string Commented = """
            # Above everything.
            doughwright: 1
            title: Bread # the plain one

            home:
              # Our school.
              air: 21 C
            tools:
              - scale
              # The small one.
              - bowl # of steel
            parts:
              dough:
                # From the mill.
                strong white flour: 500 g
                water: 300 g # warm
            # At the end.

            """;
        var reading = RecipeText.Read(Commented);
        Assert.Empty(reading.Findings);
        var written = RecipeText.Write(reading.Recipe!, reading.Document);
        Assert.Empty(written.Findings);
        Assert.Equal(Commented, written.Text.Replace(
            "  altitude: 0 m\n  tap: 12 C\n  fridge: 5 C\n  oven: fan\n  trays: 2\n  scale: 1 g\n", ""));
        Assert.Equal(Commented, reading.Document!.Normalised());
    }

    [Fact]
    public void CommentsWhosePlaceIsGone_AreCounted()
    {
        var reading = RecipeText.Read(Texts.PotatoRollsWith("    salt: 7 g", "    # Fine salt.\n    salt: 7 g # level spoon"));
        var recipe = reading.Recipe!;
        var unsalted = recipe with
        {
            Components = [.. recipe.Components.Select(part => part with { Lines = [.. part.Lines.Where(line => line.Id != "salt")] })],
        };
        var finding = Assert.Single(RecipeText.Write(unsalted, reading.Document).Findings);
        Assert.Equal(("comments-dropped", Grade.Warning, 2), (finding.Kind, finding.Grade, finding.Arguments["count"]));
    }

    [Theory]
    [InlineData("oven: 170 C fan", "oven: 375 F static")]
    [InlineData("of 80 g", "of 3 oz")]
    [InlineData("salt: 7 g", "salt: 0.25 oz")]
    [InlineData("altitude: 5 m", "altitude: 3937 ft")]
    [InlineData("depth: 1 cm", "depth: 0.5 in")]
    public void OtherUnits_ArePrintedBackAsTyped(string metric, string typed)
    {
        var text = Texts.PotatoRollsWith(metric, typed);
        Assert.Equal(text, RecipeText.Write(RecipeText.Read(text).Recipe!));
    }

    private static Line Doubled(Line line) => line with { Mass = line.Mass is { } mass ? mass * 2 : null };

    [Fact]
    public void TypedThatNoLongerSaysTheMass_IsNotWritten()
    {
        var recipe = RecipeText.Read(Texts.PotatoRolls).Recipe!;
        var more = recipe with
        {
            Components = [.. recipe.Components.Select(part => part with { Lines = [.. part.Lines.Select(Doubled)] })],
        };
        Assert.Contains("salt: 14 g\n", RecipeText.Write(more), StringComparison.Ordinal);
    }
}

using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Tests.Scenarios;

/// <summary>Two recipes written with nothing but README and docs/text-form.md at hand.</summary>
public class OwnRecipeScenarios
{
    private static readonly string[] Texts = ["country-loaf.yaml", "milk-bread.yaml"];

    public static TheoryData<string> All => [.. Texts];

    [Theory]
    [MemberData(nameof(All))]
    public void Text_IsUnderstood_AndNothingIsWrong(string name)
    {
        var findings = Run.Of("findings", House.Text(name));
        Assert.Equal(0, findings.ExitCode);
        Assert.DoesNotContain("Warning", findings.Output, StringComparison.Ordinal);
    }

    /// <summary>What the page shows whole can be copied, and then nothing is left to put right.</summary>
    [Fact]
    public void WholeExamplesOfTheForm_AreRehearsedWithoutAWarning()
    {
        var page = File.ReadAllText(House.PathTo("docs", "text-form.md"));
        var examples = page.Split("```yaml\n").Skip(1).Select(rest => rest.Split("```")[0]).Where(text => text.Contains("\nparts:\n", StringComparison.Ordinal));
        Assert.NotEmpty(examples);
        Assert.All(examples, text =>
        {
            var findings = Run.WithInput(text, "findings", "-");
            Assert.Equal(0, findings.ExitCode);
            Assert.DoesNotContain("Warning", findings.Output, StringComparison.Ordinal);
            Assert.Equal(0, Run.WithInput(text, "rehearse", "-").ExitCode);
        });
    }

    /// <summary>The law that home is home holds for every recipe.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void Home_GivesWhatItsAuthorMeasured(string name)
    {
        var recipe = RecipeText.Read(File.ReadAllText(House.Text(name))).Recipe!;
        var home = Rehearser.Rehearse(recipe, Larder.Shipped);
        foreach (var step in recipe.Steps.Where(step => step.Measured?.Time is not null))
        {
            Assert.Equal(step.Measured!.Time!.Value.Minutes, home.FindStep(step.Id)!.Time!.Value.Likely.Minutes, 1e-9);
        }

        var mix = recipe.Steps.Last(step => step is { Kind: StepKind.Mix, Measured.Temperature: not null });
        Assert.Equal(mix.Measured!.Temperature!.Value.Celsius, home.Components.Single(part => part.Id == "dough").Mixed!.Value.Likely.Celsius, 1e-9);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void ColdKitchen_TakesLongerToRise(string name)
    {
        var recipe = RecipeText.Read(File.ReadAllText(House.Text(name))).Recipe!;
        var cold = Rehearser.Rehearse(recipe, Larder.Shipped, new() { Kitchen = recipe.Home with { Air = Engine.Kitchens.AirProfile.Constant(Temperature.FromCelsius(15)) } });
        Assert.All(cold.Steps.Where(step => step.Kind is StepKind.Bulk), step => Assert.True(step.Time!.Value.Likely > step.HomeTime!.Value));
    }

    /// <summary>A paste taken off the hob at 65 °C does not cool from boiling.</summary>
    [Fact]
    public void CookedTo65_StartsCoolingBelow65()
    {
        var recipe = RecipeText.Read(File.ReadAllText(House.Text("milk-bread.yaml"))).Recipe!;
        var home = Rehearser.Rehearse(recipe, Larder.Shipped);
        Assert.Equal(65, home.FindStep("tangzhong")!.EndTemperature!.Value.Celsius, 1e-9);
        Assert.InRange(home.FindStep("cool-it")!.StartTemperature!.Value.Celsius, 30, 65);
    }

    /// <summary>Milk also stands in the part made beforehand; what may be warmed for the dough is a line of the dough.</summary>
    [Fact]
    public void Free_TakesLinesOfTheDoughOnly()
    {
        Assert.Equal(0, Run.Of("rehearse", House.Text("milk-bread.yaml"), "--air", "17C", "--dough", "27C", "--free", "milk").ExitCode);
        var run = Run.Of("rehearse", House.Text("country-loaf.yaml"), "--dough", "24C", "--free", "water");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("warm-water", run.Messages, StringComparison.Ordinal);
    }
}

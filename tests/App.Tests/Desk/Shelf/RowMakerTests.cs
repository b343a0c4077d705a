using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Shelf;

public class RowMakerTests
{
    private static readonly Voice Metric = new(Words.Shipped, MeasureSystem.Metric);

    public static TheoryData<string, string?> DemosInKitchens()
    {
        using var scratch = Scratch.WithTheShipped();
        var data = new TheoryData<string, string?>();
        foreach (var recipe in scratch.Folder.Recipes)
        {
            data.Add(recipe, null);
            foreach (var kitchen in scratch.Folder.Kitchens)
            {
                data.Add(recipe, kitchen);
            }
        }

        return data;
    }

    /// <summary>A row is rehearsed with the likely run alone, and says what the ordinary rehearsal says.</summary>
    [Theory]
    [MemberData(nameof(DemosInKitchens))]
    public void Row_SaysWhatTheOrdinaryRehearsalSays(string name, string? kitchen)
    {
        using var scratch = Scratch.WithTheShipped();
        var there = kitchen is null ? null : ShelfKitchen.Find(scratch.Folder, kitchen)!.Kitchen;
        var bytes = scratch.Folder.Recipe(name)!;
        var recipe = RecipeText.Read(System.Text.Encoding.UTF8.GetString(bytes)).Recipe!;
        var ordinary = Rehearser.RehearseOverSections(
            Formula.Balance(recipe, Larder.Shipped), Larder.Shipped, new() { Kitchen = there }, TestContext.Current.CancellationToken).Rehearsal;

        var (row, drawable) = RowMaker.Make(bytes, there, Metric);

        Assert.Equal(recipe.Title, row.Title);
        Assert.Equal(ordinary.Total?.Likely.Minutes, row.Total);
        Assert.Equal(ordinary.Hands.Minutes, row.Hands!.Value, 1e-9);
        Assert.Equal(ordinary.Findings.Select(finding => finding.Id), drawable!.Rehearsal.Findings.Select(finding => finding.Id));
        Assert.Equal(
            ordinary.Steps.Where(step => step.Start < Duration.Zero).Select(step => -step.Start!.Value.Minutes).OrderDescending(),
            row.Ahead.Select(ahead => ahead.Minutes));
    }

    [Theory]
    [InlineData("potato-rolls", "10 rolls of 80\u00a0g; scald and boiled potato.")]
    [InlineData("hearth-loaf", "1 loaf of 905\u00a0g; poolish.")]
    public void Facts_AreTheRecipesOwn(string name, string facts)
    {
        using var scratch = Scratch.WithTheShipped();
        Assert.Equal(facts, RowMaker.Make(scratch.Folder.Recipe(name)!, null, Metric).Row.Facts);
    }

    [Fact]
    public void TextThatIsNotUnderstood_CountsItsLines()
    {
        var (row, drawable) = RowMaker.Make(File.ReadAllBytes(House.Text("potato-rolls-twelve-faults.yaml")), null, Metric);
        Assert.InRange(row.LinesNotUnderstood!.Value, 5, 13);
        Assert.Null(row.Total);
        Assert.Null(drawable);
    }

    [Theory]
    [InlineData("")]
    [InlineData("\0\u0001")]
    [InlineData("- - -")]
    public void TextThatIsNone_CountsTheLinesThatItsFindingsName(string text)
    {
        var bytes = System.Text.Encoding.UTF8.GetBytes(text);
        var (_, findings, understood) = Doughwright.App.Commands.CommandRun.Understand(Doughwright.App.Commands.InputFile.Of("", bytes));
        Assert.False(understood);
        var lines = findings.Where(finding => finding.NotUnderstood && finding.Position.IsKnown).Select(finding => finding.Position.Line).Distinct().Count();
        Assert.Equal(lines, RowMaker.Make(bytes, null, Metric).Row.LinesNotUnderstood);
    }
}

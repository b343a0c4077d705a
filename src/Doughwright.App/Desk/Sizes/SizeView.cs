using Doughwright.App.Commands;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Recipes.Views;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Text;
using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Sizes;

/// <summary>A recipe in another size, in words for a page.</summary>
/// <param name="Said">The size and what it makes, in sentences.</param>
/// <param name="Title">What the new recipe is called when nobody calls it otherwise; null when the size was refused.</param>
internal sealed record SizeView(
    IReadOnlyList<string> Said,
    string? Title,
    IReadOnlyList<SizeRow> Rows,
    IReadOnlyList<SizeChoice> Choices,
    IReadOnlyList<string> Fits,
    IReadOnlyList<SizeMeasure> Measures,
    IReadOnlyList<FindingView> Findings)
{
    /// <param name="take">Address that takes so many whole pieces of a line.</param>
    public static SizeView Of(SizedRecipe sized, RecipeFile file, Func<string, int, string> take, Voice voice)
    {
        var (resized, _, findings) = sized;
        var words = new ResizeWords(resized, voice);
        return new(
            resized.Recipe is null ? [voice.Say("resize.refused", ("title", file.Recipe!.Title))] : words.Head(),
            resized.Recipe is { } recipe ? TitleOf(recipe, resized, voice) : null,
            [.. resized.Lines.Select(line => new SizeRow(words.PartOf(line), line.Name, voice.Text(line.Before), words.Now(line), words.Error(line), words.ErrorPercent(line)))],
            [.. resized.Choices.Select(choice => new SizeChoice(Capital.Of(words.Choice(choice)), [.. choice.Options.Select(option => new SizeOption(words.Shift(choice, option, "sizes.option"), voice.Say("sizes.take", ("count", option.Count), ("name", choice.Name)), take(words.Taken(choice), option.Count)))]))],
            [.. resized.Fits.Select(words.Fit)],
            [.. resized.Measures.Select(measure => new SizeMeasure(measure.Name, words.Was(measure), words.NowOf(measure), words.Range(measure), words.Stands(measure)))],
            FindingView.All([.. findings.Open.Where(finding => !file.Findings.Any(known => known.Id == finding.Id))], file.Recipe, voice));
    }

    /// <summary>By its pieces; by its dough where the word for a piece was written for another number of them.</summary>
    private static string TitleOf(Recipe recipe, Resized resized, Voice voice) => recipe.Make is { } make && !resized.Findings.Any(finding => finding.Kind == "resize-one-or-many")
        ? voice.Say("sizes.title-of", ("title", recipe.Title), ("pieces", make.Pieces), ("what", make.What))
        : voice.Say("sizes.title-of-dough", ("title", recipe.Title), ("dough", resized.After!.Dough));

    /// <summary>What the sentence offers to bring a recipe to: its pieces, its dough, its parts and lines, and its trays or tin.</summary>
    public static IReadOnlyList<Choice> Ways(RecipeFile file, string by, Voice voice)
    {
        var recipe = file.Recipe!;
        var ways = new List<(string Value, string Name)>();
        if (recipe.Make is { } make)
        {
            ways.Add((SizeAsk.Pieces, voice.Say("sizes.by-pieces", ("what", make.What), ("piece", make.PieceMass))));
            ways.Add(("piece", voice.Say("sizes.by-piece", ("pieces", make.Pieces), ("what", make.What))));
        }

        ways.Add(("dough", voice.Words["sizes.by-dough"]));
        ways.AddRange(recipe.Components.Where(part => part.Kind != ComponentKind.Dough).Select(part => ($"{SizeAsk.Have}={part.Id}", voice.Say("sizes.by-have", ("name", part.Name)))));
        ways.AddRange(
            from line in recipe.Components.SelectMany(part => part.Lines).DistinctBy(line => line.Id)
            where line.Uses is null && recipe.FindComponent(line.Id) is null
            select ($"{SizeAsk.Have}={line.Id}", voice.Say("sizes.by-have", ("name", line.Name))));
        ways.Add(("trays", voice.Words["sizes.by-trays"]));
        ways.Add(("tin", voice.Words["sizes.by-tin"]));
        ways.Add(("tray", voice.Words["sizes.by-tray"]));
        return [.. ways.Select(way => new Choice(way.Value, way.Name, way.Value == by))];
    }
}

/// <summary>A line before and now; the rounding is empty where there is none.</summary>
public sealed record SizeRow(string Part, string Name, string Before, string Now, string Error, string ErrorPercent);

/// <summary>What cannot be divided, and its whole neighbours.</summary>
public sealed record SizeChoice(string Said, IReadOnlyList<SizeOption> Options);

/// <summary>One neighbour: what it shifts, and the link that takes it.</summary>
public sealed record SizeOption(string Said, string Verb, string Address);

/// <summary>What was measured in the old size, and what becomes of it.</summary>
public sealed record SizeMeasure(string Step, string Was, string Now, string Range, string Stands);

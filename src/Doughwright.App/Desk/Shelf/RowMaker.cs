using Doughwright.App.Commands;
using Doughwright.App.Desk.Recipes.Views;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>Reads and rehearses a recipe for its row: the likely run only, because a row shows no range.</summary>
internal static class RowMaker
{
    private const int LikelyLane = 1;

    /// <param name="kitchen">Null is the recipe's own.</param>
    /// <returns>The row, and what its strip is drawn from; null when a line was not understood.</returns>
    public static (KeptRow Row, Drawable? Drawable) Make(byte[] bytes, Kitchen? kitchen, Voice voice)
    {
        var file = InputFile.Of("", bytes);
        var (reading, findings, understood) = CommandRun.Understand(file);
        if (!understood)
        {
            var lines = findings.Where(finding => finding.NotUnderstood).Select(finding => finding.Position.Line).Where(line => line > 0).Distinct().Count();
            return (new() { Title = reading.Recipe?.Title ?? "", LinesNotUnderstood = lines }, null);
        }

        var recipe = reading.Recipe!;
        var rehearsal = Rehearsed(recipe, new Request { Kitchen = kitchen });
        var drawable = Drawable.Of(rehearsal);
        var open = FindingList.Judged(file.Text, recipe, findings, RecipeChecks.Of(recipe), rehearsal.Formula.Findings, rehearsal.Findings).Open;
        var row = new KeptRow
        {
            Title = recipe.Title,
            Facts = RowFacts.Of(rehearsal.Formula, voice),
            Findings = [.. Enum.GetValues<MarkShape>().Select(mark => new KeptCount(mark.ToString(), open.Count(finding => FindingShape.Of(finding) == mark))).Where(count => count.Count > 0)],
            Total = rehearsal.Total?.Likely.Minutes,
            Hands = rehearsal.Steps.Count == 0 ? null : rehearsal.Hands.Minutes,
            MostPixelsPerGram = ShelfStrips.ScaleOf(drawable),
            Ahead = [.. rehearsal.Steps.Where(step => step.Start is { } start && start < Duration.Zero).OrderBy(step => step.Start!.Value.Minutes)
                .Select(step => new KeptAhead(StepName.Of(step, voice), -step.Start!.Value.Minutes))],
        };
        return (row, drawable);
    }

    /// <summary>A bake that has to be computed goes by its section, as on the recipe's own page. A row is kept, so this is done once.</summary>
    private static Rehearsal Rehearsed(Recipe recipe, Request request)
    {
        var formula = Formula.Balance(recipe, Larder.Shipped);
        var once = Rehearser.Rehearse(formula, Larder.Shipped, request, LikelyLane);
        return once.HasComputedBake
            ? Rehearser.Rehearse(formula, Larder.Shipped, Rehearser.OverSections(Rehearser.BakesAtHome(formula), Larder.Shipped, request).Request, LikelyLane)
            : once;
    }
}

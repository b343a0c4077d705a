using System.Text.RegularExpressions;
using Doughwright.App.Commands;
using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Pages;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Hostile;

/// <summary>How far a text came: each includes the ones before it.</summary>
internal enum Reached
{
    Findings,
    Formula,
    Rehearsal,
    Page,
}

/// <summary>What the commands do with a text, without the command line. The writer of JSON throws at every number that is none.</summary>
internal static partial class SpoiledText
{
    private static readonly Voice Voice = new(Words.Shipped, MeasureSystem.Metric);

    /// <param name="depth">How far to go with a text that is understood.</param>
    public static Reached Try(string text, Reached depth)
    {
        var reading = RecipeText.Read(text);
        if (!reading.Understood || reading.Recipe is not { } recipe)
        {
            Holds(text, FindingsJson.WriteNotUnderstood(reading.Findings, Voice));
            return Reached.Findings;
        }

        Assert.True(RecipeText.Read(RecipeText.Write(recipe)).Understood, "The canonical text is not understood.");
        var stamp = Stamp.Of(recipe);
        var formula = Formula.Balance(recipe, Larder.Shipped);
        IReadOnlyList<Finding> found = [.. reading.Findings, .. RecipeChecks.Of(recipe), .. formula.Findings];
        var judged = FindingList.Judged(text, recipe, found);
        Holds(text, FormulaJson.Write(stamp, formula, judged, Voice));
        if (depth == Reached.Formula)
        {
            return Reached.Formula;
        }

        var rehearsal = Rehearser.Rehearse(formula, Larder.Shipped, Request.Home, lanes: 4);
        var all = FindingList.Judged(text, recipe, found, rehearsal.Findings);
        Holds(text, RehearsalJson.Write(stamp, rehearsal, all, Voice));
        Holds(text, RehearsalText.Write(rehearsal, Request.Home, all, [.. recipe.Steps.Select(step => step.Id)], Voice));
        if (depth == Reached.Rehearsal)
        {
            return Reached.Rehearsal;
        }

        var sized = SizedRecipe.Of(reading, new(new ResizeWish.Dough(Mass.FromGrams(1234))), text, found);
        Holds(text, ResizeJson.Write(stamp, sized.Resized, sized.Text, sized.Findings, Voice));
        Holds(text, SwapJson.WriteOffers(stamp, recipe, Swapping.Offer(recipe, Larder.Shipped), judged, Voice));
        Holds(text, ReaderPage.Write(PageRun.Of(recipe, Larder.Shipped, null), all.Open, new(stamp.State, stamp.Engine, stamp.Larder), Voice.Words, Voice.Measures));
        return Reached.Page;
    }

    /// <summary>
    /// The word of a number that is none stands in no answer, unless it is quoted from the text. Inside a longer word, as in the digest of a
    /// sheet of style, it is another word.
    /// </summary>
    internal static void Holds(string text, string written)
    {
        Assert.True(written.Length > 2);
        var none = None().Match(written);
        Assert.True(
            !none.Success || text.Contains(none.Value, StringComparison.Ordinal),
            none.Success ? $"A number that is none was written: {written[Math.Max(0, none.Index - 60)..Math.Min(written.Length, none.Index + 40)]}" : "");
    }

    [GeneratedRegex("(?<![A-Za-z0-9+/=])(?:NaN|-?Infinity)(?![A-Za-z0-9+/=])|∞")]
    private static partial Regex None();
}

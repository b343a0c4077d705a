using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Doughwright.App.Commands;
using Doughwright.App.Json;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Pages;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Pages;

/// <summary>Pages of the demo recipes and of one that means harm, made once for all tests.</summary>
internal static class MadePages
{
    public const string Hostile = "hostile";

    private static readonly Lazy<Dictionary<string, Made>> Pages = new(() => new[] { "potato-rolls", "tin-loaf", "hearth-loaf", Hostile }.ToDictionary(name => name, name => Of(TextOf(name))));

    public static IReadOnlyCollection<string> Names => Pages.Value.Keys;

    public static Made Named(string name) => Pages.Value[name];

    public static string TextOf(string name) => File.ReadAllText(name == Hostile ? House.PathTo("tests", "data", "pages", "hostile.yaml") : House.Demo(name + ".yaml"));

    public static Made Of(string text, Kitchen? kitchen = null, MeasureSystem measures = MeasureSystem.Metric, Words? words = null, Func<Recipe, Recipe>? change = null)
    {
        var reading = RecipeText.Read(text);
        var recipe = (change ?? (same => same))(reading.Recipe!);
        var run = PageRun.Of(recipe, Larder.Shipped, kitchen);
        var findings = FindingList.Of(text, reading.Findings, RecipeChecks.Of(recipe), run.Here.Formula.Findings, run.Here.Findings);
        var stamp = Stamp.Of(recipe);
        return new(run, findings, ReaderPage.Write(run, findings, new(stamp.State, "0.0.0", "larder"), words ?? Words.Shipped, measures));
    }

    /// <summary>A page with what it was made from.</summary>
    internal sealed record Made(PageRun Run, IReadOnlyList<Finding> Findings, string Html)
    {
        public IHtmlDocument Document { get; } = new HtmlParser().ParseDocument(Html);
    }
}

using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>Reads and writes recipes as text. The form is docs/text-form.md.</summary>
public static class RecipeText
{
    internal const string Title = "title";
    internal const string Region = "region";
    internal const string Make = "make";
    internal const string Words = "words";
    internal const string Home = "home";
    internal const string Tools = "tools";
    internal const string Own = "own";
    internal const string Parts = "parts";
    internal const string Steps = "steps";
    internal const string Without = "without";
    internal const string Swaps = "swaps";
    internal const string Keeping = "keeping";
    internal const string Accepted = "accepted";

    private static readonly string[] Keys = [FormLine.Key, Title, Region, Make, Words, PhotoGrammar.Key, Home, Tools, Own, Parts, Steps, Without, Swaps, Keeping, Accepted];

    /// <summary>Reads a text. Never throws for what a person wrote: all faults are findings, all at once.</summary>
    public static Reading Read(string text)
    {
        var (document, log) = TreeReader.Read(text);
        if (document is null)
        {
            return new(null, log.Findings, null);
        }

        if (!FormLine.Check(document, log))
        {
            return new(null, [.. log.Findings.Where(finding => finding.Kind == FormFaults.FormNewer)], document);
        }

        var recipe = Read(new Section(document.Root, "", log, Keys), log);
        return new(recipe.Components.Any(component => component.Lines.Count > 0) ? recipe : null, log.Findings, document);
    }

    /// <summary>The canonical text: equal recipes give equal texts, and reading it gives the recipe back.</summary>
    public static string Write(Recipe recipe) => Writing.Of(RecipeWriter.Write(recipe), null).Text;

    /// <summary>The canonical text with the comments of an older text where they stood.</summary>
    public static Writing Write(Recipe recipe, TextDocument? older) => Writing.Of(RecipeWriter.Write(recipe), older);

    /// <summary>
    /// A text with its recipe changed: lines that the change does not touch stay byte for byte, with comments, layout and what was typed. Nothing changed gives
    /// the text back.
    /// </summary>
    /// <exception cref="InvalidOperationException">There is no recipe in the text.</exception>
    public static Writing Change(string text, Func<Recipe, Recipe> change)
    {
        var reading = Read(text);
        return reading is { Recipe: { } recipe, Document: { } document }
            ? Writing.Of(text, document, RecipeWriter.Write(recipe), RecipeWriter.Write(change(recipe)))
            : throw new InvalidOperationException("There is no recipe in this text.");
    }

    private static Recipe Read(Section root, FindingLog log)
    {
        (string, string)[] needed = [(Title, FormFaults.TitleMissing), (Home, FormFaults.HomeMissing), (Parts, FormFaults.PartsMissing)];
        foreach (var (key, kind) in needed)
        {
            if (!root.Has(key))
            {
                log.Wrong(kind, "", new(1, 1));
            }
        }

        var region = root.Words(Region) is { } code ? ReadRegion(code) : null;
        var own = OwnSection.Read(root.Keys(Own), Own, log, region);
        var parts = PartsSection.Read(root.Keys(Parts), Parts, log, Larder.Shipped.With(own.Select(one => one.Ingredient)).In(region));
        DoughLimits.Check(parts.Components, Parts, log);
        var home = ReadHome(root, log) ?? new() { Air = KitchenSection.StandIn };
        return new()
        {
            Title = root.Words(Title)?.Text ?? "",
            Region = region,
            Make = root.Words(Make) is { } make ? MakeGrammar.Read(make) : null,
            Words = root.Prose(Words),
            Photos = PhotoGrammar.Read(root),
            Home = home,
            Tools = root.Items(Tools) is { } tools ? [.. tools.Select(tool => tool.Text)] : null,
            Own = own,
            Components = parts.Components,
            Steps = StepsSection.Read(root.Keys(Steps), parts, home.Vessels, Steps, log),
            Accepted = AcceptedSection.Read(root.Keys(Accepted), Accepted, log),
            Without = AdviceSections.Without(root.Keys(Without), Without, log),
            Swaps = AdviceSections.Swaps(root, Swaps, parts),
            Keeping = AdviceSections.Keeping(root, Keeping),
        };
    }

    private static Ingredients.Region? ReadRegion(Phrase code)
    {
        if (RegionCodes.WithCode(code.Text) is { } region)
        {
            return region;
        }

        code.Log.Fault(FormFaults.UnknownWord, code.Place, code.Position, Phrase.UnknownWord(code.Text, RegionCodes.Codes));
        return null;
    }

    private static Kitchen? ReadHome(Section root, FindingLog log)
    {
        if (root.Keys(Home) is not { } mapping)
        {
            return null;
        }

        var home = new Section(mapping, Home, log, [KitchenSection.Name, .. KitchenSection.Keys]);
        return KitchenSection.Read(home, home.Words(KitchenSection.Name)?.Text ?? "", root.Entry(Home)!.KeyPosition, log).Kitchen;
    }
}

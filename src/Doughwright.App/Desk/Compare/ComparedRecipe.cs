using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Differences;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Compare;

/// <summary>A recipe of the shelf whose kitchens are set side by side. Its text and its home are read and worked out once.</summary>
internal sealed class ComparedRecipe
{
    private readonly Words words;
    private readonly QuestionReader reader;
    private readonly Formula formula;
    private readonly Rehearsal home;

    private ComparedRecipe(string name, Recipe recipe, ShelfFolder shelf, Words words)
    {
        (Name, Recipe, this.words) = (name, recipe, words);
        reader = new(recipe, name, shelf, words);
        formula = Formula.Balance(recipe, Larder.Shipped);
        home = Rehearser.Rehearse(formula, Larder.Shipped, Request.Home);
        Kitchens = [new(CompareQuestion.Home, recipe.Home), .. KitchenOnShelf.All(shelf).Where(kitchen => kitchen.Kitchen is not null && kitchen.Kitchen != recipe.Home).Select(kitchen => new NamedKitchen(kitchen.Name, kitchen.Kitchen!))];
    }

    /// <summary>Name of its file.</summary>
    public string Name { get; }

    public Recipe Recipe { get; }

    /// <summary>The kitchens that can be set side by side, home first; one of the shelf that is home itself is not told twice.</summary>
    public IReadOnlyList<NamedKitchen> Kitchens { get; }

    /// <summary>The kitchen set beside home when none is asked for: the first that is another one; home itself when there is none.</summary>
    public string Other => Kitchens.FirstOrDefault(kitchen => kitchen.Kitchen with { Name = "" } != Recipe.Home with { Name = "" }, Kitchens[0]).Choice;

    /// <summary>A recipe of the shelf; its <see cref="Recipe"/> null when lines of its text were not understood. Null when none has this name.</summary>
    public static Found? Open(string name, ShelfFolder shelf, Words words)
    {
        if (shelf.Recipe(name) is not { } bytes)
        {
            return null;
        }

        var (reading, _, understood) = CommandRun.Understand(InputFile.Of(name, bytes));
        return new(understood ? new(name, reading.Recipe!, shelf, words) : null);
    }

    /// <summary>What came of looking for a recipe.</summary>
    /// <param name="Recipe">Null when its text was not understood.</param>
    public sealed record Found(ComparedRecipe? Recipe);

    public Comparison Compare(CompareQuestion question, MeasureSystem measures)
    {
        var refusals = new List<Refusal>();
        var first = SideOf(question.OfFirst, measures, refusals);
        var second = SideOf(question.OfSecond, measures, refusals);
        var plain = second.Asked.Request with { Dough = null, Free = [] };
        return new(
            new(first.Choice, second.Choice, second.Asked.Accepted.Without(Question.Kitchen)),
            first,
            second,
            second.Asked.Request.Dough is null ? null : Rehearser.Rehearse(formula, Larder.Shipped, plain),
            RehearsalDifferences.Between(formula, Larder.Shipped, first.Asked.Request, second.Asked.Request),
            [.. refusals.Distinct()]);
    }

    private Side SideOf(Question question, MeasureSystem measures, List<Refusal> refusals)
    {
        refusals.AddRange(reader.Read(question, measures).Refusals);
        var keeping = Asking.Keeping.Of(question, reader, formula, home);
        var asked = reader.Read(keeping.Question, measures);
        var rehearsal = Rehearser.Rehearse(formula, Larder.Shipped, asked.Request);
        var file = asked.Named ?? CompareQuestion.Home;
        var choice = Kitchens.Any(kitchen => kitchen.Choice == file) ? file : CompareQuestion.Home;
        return new(choice, asked.Kitchen.Name is { Length: > 0 } name ? name : file.Length > 0 ? file : words["compare.home-name"], asked, keeping.State, rehearsal);
    }

    /// <summary>A kitchen that can be chosen.</summary>
    /// <param name="Choice">What stands for it in an address.</param>
    public sealed record NamedKitchen(string Choice, Kitchen Kitchen)
    {
        /// <summary>What it calls itself, or the name of its file; empty for a home without a name.</summary>
        public string Name => Kitchen.Name.Length > 0 ? Kitchen.Name : Choice;
    }
}

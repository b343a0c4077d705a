using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Differences;
using Doughwright.Engine.Rehearsals.Sections;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Compare;

/// <summary>A recipe of the shelf whose kitchens are set side by side. Its text and its home are read and worked out once.</summary>
internal sealed class ComparedRecipe
{
    private readonly Words words;
    private readonly QuestionReader reader;
    private readonly Formula formula;
    private readonly Rehearsal home;
    private readonly string text;
    private readonly KeptBakes bakes;

    private ComparedRecipe(string name, string text, Recipe recipe, ShelfFolder shelf, Words words, KeptBakes bakes)
    {
        (Name, Recipe, this.text, this.words, this.bakes) = (name, recipe, text, words, bakes);
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
    public static Found? Open(string name, ShelfFolder shelf, Words words, KeptBakes bakes)
    {
        if (shelf.Recipe(name) is not { } bytes)
        {
            return null;
        }

        var file = InputFile.Of(name, bytes);
        var (reading, _, understood) = CommandRun.Understand(file);
        return new(understood ? new(name, file.Text, reading.Recipe!, shelf, words, bakes) : null);
    }

    /// <summary>What came of looking for a recipe.</summary>
    /// <param name="Recipe">Null when its text was not understood.</param>
    public sealed record Found(ComparedRecipe? Recipe);

    /// <summary>At once: over the sections through what is baked where all of them are known, else along one radius in both kitchens.</summary>
    public Comparison Compare(CompareQuestion question, MeasureSystem measures)
    {
        var refusals = new List<Refusal>();
        var (first, second) = (Read(question.OfFirst, measures, refusals), Read(question.OfSecond, measures, refusals));
        var plain = PlainOf(second);
        var once = new Comparison(
            new(first.Choice, second.Choice, second.Asked.Accepted.Without(Question.Kitchen)),
            SideOf(first, null),
            SideOf(second, null),
            plain is null ? null : Rehearser.Rehearse(formula, Larder.Shipped, plain.Request),
            RehearsalDifferences.Between(formula, Larder.Shipped, first.Asked.Request, second.Asked.Request),
            [.. refusals.Distinct()]);
        if (!once.Rehearsals.Any(rehearsal => rehearsal.HasComputedBake))
        {
            return once;
        }

        var known = All(first, second, plain).Select(read => bakes.Find(text, read)).ToArray();
        return bakes.FindDifferences(text, first.Asked, second.Asked) is not { } differences || known.Any(one => one is null)
            ? once with { AwaitsBakes = true }
            : once with
            {
                First = SideOf(first, known[0]),
                Second = SideOf(second, known[1]),
                Untouched = plain is null ? null : Rehearser.Rehearse(formula, Larder.Shipped, known[2]!.Request),
                Differences = differences,
            };
    }

    /// <summary>Computes the sections that <see cref="Compare"/> goes by, and those on every way between the two kitchens.</summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public void Bake(CompareQuestion question, MeasureSystem measures, CancellationToken stop)
    {
        var (first, second) = (Read(question.OfFirst, measures, []), Read(question.OfSecond, measures, []));
        foreach (var read in All(first, second, PlainOf(second)))
        {
            bakes.Make(text, formula, read, stop);
        }

        bakes.MakeDifferences(text, formula, first.Asked, second.Asked, stop);
    }

    private static Understood[] All(Taken first, Taken second, Understood? plain) => plain is null ? [first.Asked, second.Asked] : [first.Asked, second.Asked, plain];

    /// <summary>The second kitchen with the recipe as it is written; null when that is what is shown.</summary>
    private static Understood? PlainOf(Taken second) => second.Asked.Request.Dough is null ? null : second.Asked with
    {
        Accepted = second.Asked.Accepted.Without(Question.Dough, Question.Free),
        Request = second.Asked.Request with { Dough = null, Free = [] },
    };

    /// <summary>What is asked of a side, and whether its dough is kept.</summary>
    private sealed record Taken(string Choice, Understood Asked, KeepState Keep);

    private Taken Read(Question question, MeasureSystem measures, List<Refusal> refusals)
    {
        refusals.AddRange(reader.Read(question, measures).Refusals);
        var keeping = Asking.Keeping.Of(question, reader, formula, home);
        var asked = reader.Read(keeping.Question, measures);
        var file = asked.Named ?? CompareQuestion.Home;
        return new(Kitchens.Any(kitchen => kitchen.Choice == file) ? file : CompareQuestion.Home, asked, keeping.State);
    }

    private Side SideOf(Taken taken, BakesOverSections? over)
    {
        var asked = taken.Asked;
        var file = asked.Named ?? CompareQuestion.Home;
        var rehearsal = Rehearser.Rehearse(formula, Larder.Shipped, over?.Request ?? asked.Request);
        var name = asked.Kitchen.Name is { Length: > 0 } own ? own : file.Length > 0 ? file : words["compare.home-name"];
        return new(taken.Choice, asked.Accepted.ChangesKitchen ? new Voice(words, MeasureSystem.Metric).Say("kitchen-changed", ("kitchen", name)) : name, asked, taken.Keep, rehearsal);
    }

    /// <summary>A kitchen that can be chosen.</summary>
    /// <param name="Choice">What stands for it in an address.</param>
    public sealed record NamedKitchen(string Choice, Kitchen Kitchen)
    {
        /// <summary>What it calls itself, or the name of its file; empty for a home without a name.</summary>
        public string Name => Kitchen.Name.Length > 0 ? Kitchen.Name : Choice;
    }
}

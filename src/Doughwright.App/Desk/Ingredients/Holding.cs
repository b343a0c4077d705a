using Doughwright.App.Commands;
using Doughwright.App.Desk.Drafting;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>A recipe that holds another version of an own ingredient than the book has, or names it and holds none.</summary>
/// <param name="Recipe">Name of its text.</param>
/// <param name="Held">The version in the recipe; null where it holds none.</param>
internal sealed record Holding(string Recipe, string Title, long State, OwnIngredient? Held)
{
    /// <summary>Lines that are told of what is otherwise.</summary>
    private const int MostLines = 4;

    /// <summary>Recipes in which the ingredient is otherwise than in the book, in the order of their names.</summary>
    public static IReadOnlyList<Holding> Otherwise(OwnIngredient own, UsedIn recipes) =>
    [
        .. recipes.All()
            .Where(recipe => OwnEdits.In(recipe.Recipe, own.Name) is { } held ? !OwnEdits.SayTheSame(held, own) : OwnEdits.IsNamedIn(recipe.Recipe, own.Name))
            .Select(recipe => new Holding(recipe.Name, recipe.Recipe.Title, recipe.State, OwnEdits.In(recipe.Recipe, own.Name))),
    ];

    /// <summary>What the recipe's version says otherwise, in a few words.</summary>
    public string Differs(OwnIngredient own, Voice voice)
    {
        if (Held is null)
        {
            return voice.Words["larder.holds-none"];
        }

        var (mine, other) = (Lines(own), Lines(Held));
        string[] otherwise = [.. other.Except(mine).Take(MostLines)];
        return otherwise.Length > 0
            ? voice.Say("larder.holds-other", ("lines", otherwise))
            : voice.Say("larder.holds-less", ("lines", mine.Except(other).Take(MostLines).ToArray()));
    }

    private static string[] Lines(OwnIngredient own) => IngredientText.Write(own).Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>What to know of the water where both say how much the flour takes up, and not the same; null else.</summary>
    public string? Thirst(OwnIngredient own, Voice voice) =>
        Held?.Absorption is { } was && own.Absorption is { } now && was.Share != now.Share
            ? voice.Say(
                now.Share > was.Share ? "larder.thirstier" : "larder.less-thirsty",
                ("was", was.Share),
                ("now", now.Share),
                ("points", Math.Abs(now.Share.Value - was.Share.Value)))
            : null;

    /// <summary>Takes the book's version into a recipe, as its next state.</summary>
    /// <param name="shown">The state of the recipe that was shown.</param>
    /// <returns>Whether it is done; else a fault says why not.</returns>
    public static bool Bring(OwnIngredient own, string recipe, long? shown, ShelfFolder shelf, Faults faults)
    {
        if (RecipeFile.Read(recipe, shelf) is not { Recipe: not null, IsWhole: true } file)
        {
            faults.Add("own-no-recipe", ("name", recipe));
            return false;
        }

        switch (Editor.Carry(file.Text, known => OwnEdits.Take(known, own)))
        {
            case EditedText.Changed changed:
                if (shown is { } from && shelf.RecipeTexts.Write(recipe, from, changed.Text, DeedWords.Of(changed.Deed, faults.Voice)) is WriteAnswer.Written)
                {
                    return true;
                }

                faults.Add("paper-meanwhile", ("name", file.Recipe.Title));
                return false;
            case EditedText.Refused refused:
                foreach (var reason in refused.Reasons)
                {
                    faults.Add(reason);
                }

                return false;
            default:
                return true;
        }
    }
}

using System.Globalization;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Recipes;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Desk.States;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Beside;

/// <summary>One of the two that stand side by side: a state of this recipe, or another recipe as it is now.</summary>
/// <param name="Value">In the address: empty for the recipe as it is now, the number of a state, or the name of another recipe.</param>
/// <param name="Name">What it is called.</param>
/// <param name="File">What names it on the command line.</param>
/// <param name="State">The state of this recipe; null for another one.</param>
/// <param name="Recipe">Null when its text was not understood.</param>
internal sealed record SideAsked(string Value, string Name, string File, long? State, Recipe? Recipe)
{
    /// <summary>The recipe as it is now: no recipe has an empty name.</summary>
    public const string Now = "";

    /// <summary>Null when there is no such state and no such recipe.</summary>
    public static SideAsked? Of(string value, RecipeFile file, RecipeStates states, ShelfFolder shelf)
    {
        if (value == Now)
        {
            return new(Now, states.NameOf(states.Now), shelf.RecipeTexts.FileOf(file.Name), states.Now, file.Recipe);
        }

        if (RecipeStates.Number(value) is { } number && states.Find(number) is not null)
        {
            return new(
                number == states.Now ? Now : value, states.NameOf(number), BookAddress.Of(shelf.RecipeTexts.Path, file.Name, number), number,
                Understood(InputFile.Of(file.Name, System.Text.Encoding.UTF8.GetBytes(shelf.Book.Papers.TextOf(number)!))));
        }

        return RecipeFile.Read(value, shelf) is { } other
            ? new(value, other.Recipe?.Title is { Length: > 0 } title ? title : value, shelf.RecipeTexts.FileOf(value), null, other.Recipe)
            : OfOther(value, states, shelf);
    }

    /// <summary>A state of another recipe: "potato-rolls@12".</summary>
    private static SideAsked? OfOther(string value, RecipeStates states, ShelfFolder shelf)
    {
        if (new BookAddress(shelf.RecipeTexts.Path, value).Parted is not { StateNumber: { } number } parted
            || shelf.Book.Papers.PaperOf(number) != parted.Name
            || shelf.Book.Papers.TextOf(number) is not { } text)
        {
            return null;
        }

        var recipe = Understood(InputFile.Of(parted.Name, System.Text.Encoding.UTF8.GetBytes(text)));
        return new(value, states.OtherNameOf(parted.Name, recipe?.Title ?? parted.Name, number), BookAddress.Of(shelf.RecipeTexts.Path, parted.Name, number), null, recipe);
    }

    /// <summary>All that can be picked: as it is now, the kept states, the one picked, and the other recipes.</summary>
    public static IReadOnlyList<SideChoice> Choices(SideAsked picked, RecipeFile file, RecipeStates states, ShelfFolder shelf, Voice voice)
    {
        var kept = states.Kept.Select(known => known.State).Where(state => state != states.Now).Distinct();
        IEnumerable<long> numbers = picked.State is { } state && state != states.Now ? kept.Append(state).Distinct() : kept;
        var titles = RecipeTitle.Apart(shelf, voice);
        return
        [
            new(Now, voice.Words["states.now"], picked.Value == Now),
            .. numbers.Select(number => (Value: number.ToString(CultureInfo.InvariantCulture), Name: states.NameOf(number))).Select(one => new SideChoice(one.Value, one.Name, one.Value == picked.Value)),
            .. picked is { State: null, Value: var value } && value != Now && !shelf.Recipes.Contains(value, StringComparer.Ordinal) ? [new SideChoice(value, picked.Name, true)] : Array.Empty<SideChoice>(),
            .. shelf.Recipes.Where(name => name != file.Name).Select(name => new SideChoice(name, titles[name], name == picked.Value)),
        ];
    }

    private static Recipe? Understood(InputFile text) => CommandRun.Understand(text) is { Understood: true, Reading.Recipe: { } recipe } ? recipe : null;
}

/// <summary>One that can be picked.</summary>
internal sealed record SideChoice(string Value, string Name, bool IsChosen);

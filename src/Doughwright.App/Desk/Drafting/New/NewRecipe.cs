using Doughwright.App.Commands;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;

namespace Doughwright.App.Desk.Drafting.New;

/// <summary>A recipe from nothing: a title, the kitchen it is tested in, and a dough with its first line.</summary>
internal static class NewRecipe
{
    /// <summary>Field of the form that holds the first line, in words.</summary>
    public const string LineName = "line";

    /// <summary>Field of the form that holds the kitchen's name in the book.</summary>
    public const string KitchenName = "kitchen";

    private const string Dough = "dough";

    /// <summary>Address at which it is written on; null with faults when it cannot begin.</summary>
    public static string? Lay(string title, string line, Kitchen home, ShelfFolder shelf, Faults faults)
    {
        var empty = new Recipe { Title = title, Home = home, Components = [], Steps = [] };
        switch (PartEdits.Add(empty, Dough, "", null, line))
        {
            case EditAnswer.Done begun:
                return OwnRecipe.Lay(begun.Recipe, title, null, null, shelf, faults, "new.did") is { } address ? address + "/write" : null;
            case EditAnswer.Refused refused:
                if (title.Length == 0)
                {
                    faults.Add("own-unnamed");
                }

                foreach (var reason in refused.Reasons)
                {
                    faults.Add(reason);
                }

                return null;
            default:
                throw new InvalidOperationException("An answer of an unknown kind.");
        }
    }
}

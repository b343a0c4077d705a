using Doughwright.Engine.Formulas;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>One line of facts from the recipe itself: "10 rolls of 80 g; scald and boiled potato."</summary>
internal static class RowFacts
{
    public static string Of(Formula formula, Voice voice)
    {
        var recipe = formula.Recipe;
        var makes = recipe.Make is { } make
            ? voice.Say("shelf.makes", ("pieces", make.Pieces), ("what", make.What), ("piece", make.PieceMass))
            : voice.Say("shelf.makes-dough", ("dough", formula.Dough));
        string[] parts = [.. recipe.Components.Where(IsTold).Select(part => NameOf(part, voice))];
        return parts.Length == 0
            ? voice.Say("shelf.facts-straight", ("makes", makes))
            : voice.Say("shelf.facts", ("makes", makes), ("parts", voice.List(parts)));
    }

    /// <summary>Parts that are made beforehand or laid in. What is only brushed or strewn on top says little about a bake.</summary>
    private static bool IsTold(Component part) => part.Kind is not (ComponentKind.Dough or ComponentKind.Wash or ComponentKind.Topping);

    /// <summary>What a mash is made of says more than its own name: "boiled potato". Other parts go by theirs.</summary>
    private static string NameOf(Component part, Voice voice) => part is { Kind: ComponentKind.Puree, Lines: [{ Conditions: [var condition, ..] } only] }
        ? voice.Say("shelf.part-in-condition", ("condition", condition), ("name", only.Name))
        : Capital.Small(part.Name);
}

using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pages.Rooms;

namespace Doughwright.Publishing.Pages;

/// <summary>What is worked out for a page: the recipe in the kitchen the page is for, and in a series of rooms.</summary>
/// <param name="Here">In the kitchen of the page, the dough as warm as at home where that can be had.</param>
/// <param name="Rooms">Null when the recipe has no rise in a room, or the room changes by the clock.</param>
internal sealed record PageRun(Rehearsal Here, RoomTable? Rooms)
{
    /// <param name="kitchen">Null is the recipe's home.</param>
    public static PageRun Of(Recipe recipe, Larder larder, Kitchen? kitchen)
    {
        var formula = Formula.Balance(recipe, larder);
        var home = Rehearser.RehearseOverSections(formula, larder, Request.Home).Rehearsal;
        var held = HeldOf(home);
        var here = kitchen is null ? home : In(formula, larder, kitchen, held);
        return new(here, RoomSeries.Of(here, formula, held));
    }

    /// <summary>A reader is told how to get the author's dough, as the desk tells it: by what may go in warmer or colder, where that can be recommended.</summary>
    private static Rehearsal In(Formula formula, Larder larder, Kitchen kitchen, Temperature? held)
    {
        if (held is not null)
        {
            var asked = Rehearser.Rehearse(formula, larder, new() { Kitchen = kitchen, Dough = held });
            if (asked.AtHome || asked.Solutions.FirstOrDefault() is { Offered: true, Lines.Count: > 0, Warmth: not null } or { Offered: true, Lines.Count: > 0, Ice: not null })
            {
                return Rehearser.RehearseOverSections(formula, larder, new() { Kitchen = kitchen, Dough = held }).Rehearsal;
            }
        }

        return Rehearser.RehearseOverSections(formula, larder, new() { Kitchen = kitchen }).Rehearsal;
    }

    /// <summary>The last dough that is mixed, after mixing at home, in whole tenths as a person reads them.</summary>
    private static Temperature? HeldOf(Rehearsal home) =>
        home.Components.LastOrDefault(component => component.Kind == ComponentKind.Dough)?.Mixed is { } mixed
            ? Temperature.FromCelsius(Math.Round(mixed.Likely.Celsius, 1, MidpointRounding.AwayFromZero))
            : null;
}

using Doughwright.Engine.Formulas;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Publishing.Pages.Rooms;

/// <summary>Rehearses a recipe in a series of rooms, from a cold one to a hot one. Everything else is as in the kitchen of the page.</summary>
internal static class RoomSeries
{
    private static readonly double[] Celsius = [16, 18, 20, 22, 24, 26, 28, 30];

    /// <summary>Rooms nearer than this to that of the page tell nothing new.</summary>
    private const double Apart = 1.5;

    /// <summary>The table; null when the recipe has no rise, or its room changes by the clock.</summary>
    public static RoomTable? Of(Rehearsal here, Formula formula, Temperature? held)
    {
        var rises = here.Steps.Where(step => step.Kind is StepKind.Bulk or StepKind.Proof && InTheRoom(here, step)).ToArray();
        if (rises.Length == 0 || !here.Kitchen.Air.IsConstant)
        {
            return null;
        }

        var own = here.Kitchen.Air.At(Duration.Zero);
        var rooms = Celsius.Where(air => Math.Abs(air - own.Celsius) >= Apart).Append(own.Celsius).Order();
        var rows = rooms.Select(air => air == own.Celsius ? Own(here, formula, held, rises) : Other(here, formula, held, rises, Temperature.FromCelsius(air))).ToArray();
        return new(rises, rows, rows.Any(row => row.Kept is not null) ? held : null);
    }

    /// <summary>What stands in a fridge or a warm place does not go with the room.</summary>
    private static bool InTheRoom(Rehearsal here, RehearsedStep step) =>
        here.Recipe.FindStep(step.Id) is not { } written || (written.Where == Where.Room && (step.Kind != StepKind.Proof || here.Kitchen.ProofingPlace is null));

    /// <summary>The room of the page has its own figures; only what keeps the dough there is asked for.</summary>
    private static RoomRow Own(Rehearsal here, Formula formula, Temperature? held, RehearsedStep[] rises) =>
        new(here.Kitchen.Air.At(Duration.Zero), true, LeverOf(Ask(formula, here.Kitchen, held, lanes: 1)), [.. rises.Select(TimeOf)]);

    private static RoomRow Other(Rehearsal here, Formula formula, Temperature? held, RehearsedStep[] rises, Temperature air)
    {
        var kitchen = here.Kitchen with { Air = AirProfile.Constant(air) };
        var asked = held is null ? null : Ask(formula, kitchen, held, Rehearser.OrdinaryLanes);
        var kept = LeverOf(asked);
        var run = kept is null ? Rehearser.Rehearse(formula, formula.Larder, new() { Kitchen = kitchen }) : asked!;
        return new(air, false, kept, [.. rises.Select(rise => run.FindStep(rise.Id) is { } step ? TimeOf(step) : new RoomTime(null, false))]);
    }

    /// <summary>Null when no dough temperature is to be kept.</summary>
    private static Rehearsal? Ask(Formula formula, Kitchen kitchen, Temperature? held, int lanes) =>
        held is null ? null : Rehearser.Rehearse(formula, formula.Larder, new() { Kitchen = kitchen, Dough = held }, lanes);

    /// <summary>The engine's first answer, where it can be recommended.</summary>
    private static Lever? LeverOf(Rehearsal? asked) => asked?.Solutions.FirstOrDefault() is { Offered: true, Lines.Count: > 0 } answer && (answer.Warmth is not null || answer.Ice is not null)
        ? new(answer.Lines, answer.Warmth?.Likely, answer.Ice?.Likely)
        : null;

    private static RoomTime TimeOf(RehearsedStep step) => new(step.Time, step.SettlesAt is not null);
}

using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Findings;

namespace Doughwright.Engine.Rehearsals.Warming;

/// <summary>"How do I get 26 °C here?": places made warm or cool by household means, worked out from heat and time.</summary>
public static class Places
{
    /// <summary>A room this near to the target does.</summary>
    private const double Near = 0.5;

    /// <summary>What is told about a miss.</summary>
    private static readonly TemperatureDelta Miss = TemperatureDelta.FromKelvins(2);

    /// <summary>No place is kept warm for longer, and no step followed farther, min.</summary>
    internal const int LongestMinutes = 24 * 60;

    /// <summary>A bath touches the bowl: yeast is kept below this. Source: yeast-heat.</summary>
    public static Temperature HottestBath => HeatAnswer.YeastBears;

    /// <summary>Source: yeast-heat.</summary>
    public static Temperature YeastDies { get; } = Temperature.FromCelsius(50);

    /// <summary>The step that is meant when none is named: the first bulk, else the first proof; null when nothing rises.</summary>
    public static string? StepOf(Rehearsal rehearsal) =>
        (rehearsal.Recipe.Steps.FirstOrDefault(step => step.Kind == StepKind.Bulk) ?? rehearsal.Recipe.Steps.FirstOrDefault(step => step.Kind == StepKind.Proof))?.Id;

    /// <summary>Places for one step at a temperature, the steadiest first; empty when the room does or when the rise cannot be computed.</summary>
    public static IReadOnlyList<PlaceAnswer> For(Rehearsal rehearsal, string step, Temperature target, PlaceWish? wish = null) =>
        Advise(rehearsal, step, target, wish).Places;

    /// <summary>The same with the other choice, colder and slower, and what a miss costs.</summary>
    /// <param name="step">Id of a bulk or a proof.</param>
    /// <param name="target">10 to 40 °C.</param>
    public static PlaceAdvice Advise(Rehearsal rehearsal, string step, Temperature target, PlaceWish? wish = null) => WorkedOut(rehearsal, step, target, wish) with
    {
        Findings = rehearsal.Recipe.FindStep(step) is { } known ? [.. ProofTrays.Of(rehearsal, known), .. RichDough.In(rehearsal.Formula, known, target)] : [],
    };

    private static PlaceAdvice WorkedOut(Rehearsal rehearsal, string step, Temperature target, PlaceWish? wish)
    {
        var again = StepAgain.Of(rehearsal, step);
        var atTarget = again?.MinutesAt(target);
        if (again is null || atTarget is not { } minutes || RefusalOf(minutes.Central) is not null)
        {
            return new()
            {
                Step = step,
                Target = target,
                Room = rehearsal.Kitchen.Air.At(Duration.Zero),
                DoughStart = null,
                AtTarget = null,
                InRoom = null,
                RoomAgainstTarget = null,
                TooCold = null,
                TooWarm = null,
                DoughTooCold = null,
                DoughTooWarm = null,
                RoomDoes = false,
                Places = [],
                Refusal = again is not null && atTarget is { Central: var likely } ? RefusalOf(likely) : PlaceRefusal.NotKnown,
            };
        }

        var length = (int)Math.Ceiling(minutes.Central);
        var room = again.Room.MeanOver(minutes.Central > 0 ? Duration.FromMinutes(minutes.Central) : Duration.FromMinutes(1));
        var roomDoes = Math.Abs(room.Celsius - target.Celsius) <= Near;
        var inRoom = again.MinutesInRoom();
        return new()
        {
            Step = step,
            Target = target,
            Room = room,
            DoughStart = Temperature.FromCelsius(again.Start.Central),
            AtTarget = Report.TimeOf(minutes),
            InRoom = inRoom is { } there ? Report.TimeOf(there) : null,
            RoomAgainstTarget = Slips.Of(inRoom, minutes),
            TooCold = Slips.Of(again.MinutesAt(target - Miss), minutes),
            TooWarm = Slips.Of(again.MinutesAt(target + Miss), minutes),
            DoughTooCold = Slips.Of(again.MinutesAt(target, -1 * Miss), minutes),
            DoughTooWarm = Slips.Of(again.MinutesAt(target, Miss), minutes),
            RoomDoes = roomDoes,
            Places = roomDoes ? [] : [.. Enum.GetValues<PlaceKind>()
                .Select(kind => new WarmPlace(kind, again, wish ?? PlaceWish.Plain, target > room))
                .Where(place => place.Holds)
                .Select(place => PlaceTelling.Of(PlaceTrial.Of(place, again, target, length), again, target))
                .OrderByDescending(answer => answer.Reaches)
                .ThenByDescending(answer => answer.PlaceWithin / answer.Course[^1].After)],
        };
    }

    private static PlaceRefusal? RefusalOf(double minutes) => minutes switch
    {
        < 1 => PlaceRefusal.OverAtOnce,
        <= LongestMinutes => null,
        _ => double.IsFinite(minutes) ? PlaceRefusal.LongerThanADay : PlaceRefusal.NeverEnds,
    };
}

using Doughwright.App.Desk.Notes;
using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>Makes the method table. Minutes by hand are shared out so that they add up to the total printed.</summary>
internal sealed class MethodMaker(Figures figures)
{
    private readonly Voice voice = figures.Voice;
    private readonly ILookup<string, NoteAtStep> notes = NoteAtStep.All(figures);

    public static MethodView Of(Figures figures)
    {
        var maker = new MethodMaker(figures);
        var total = figures.Here.Total is { } all
            ? Told.Of(figures.Column(all.Likely, "totalMinutes", figures.Home.Total?.Likely))
            : new Told([new Piece.Unknown(figures.Voice.Words["not-known"])]);
        return new(maker.Rows(), total, Figures.Minutes(figures.Here.Hands, "handsMinutes"));
    }

    private sealed record Draft(double Order, MethodRow Row, double Hands, string? HandsOf);

    private List<MethodRow> Rows()
    {
        var drafts = figures.Here.Steps.SelectMany((step, index) => Drafts(step, index)).OrderBy(draft => draft.Order).ToArray();
        var shared = Show.ShareOut([.. drafts.Select(draft => draft.Hands)], 0);
        return [.. drafts.Select((draft, i) => draft.Hands > 0 ? draft.Row with { Hands = Told.Of(new Fig(Show.Number(shared[i], 0), draft.Hands, draft.HandsOf)) } : draft.Row)];
    }

    private IEnumerable<Draft> Drafts(RehearsedStep step, int index)
    {
        var known = step.Events.Where(happening => happening.After.Likely.Minutes >= 0).ToArray();
        var own = step.Hands - Duration.FromMinutes(known.Sum(happening => happening.Hands.Minutes));
        // What has no start comes after all that has, in the order of the recipe.
        var order = step.Start?.Minutes ?? 1e9 + index;
        yield return new(order, Row(step, own), own.Minutes, known.Length == 0 ? $"steps.{step.Id}.handsMinutes" : null);
        for (var i = 0; i < known.Length; i++)
        {
            var (after, home) = (known[i].After, AtHome(step, known[i].What, i));
            var path = $"steps.{step.Id}.events.{i}";
            yield return new(
                order + after.Likely.Minutes,
                new(
                    step.Start is { } start ? Told.Of(Against(Show.DurationColumn(start + after.Likely), home?.Start is { } began ? Show.DurationColumn(began) : null)) : Unknown(),
                    Capital.Of(voice.Say("recipe.within", ("what", voice.Words[$"event.{known[i].What}"]), ("step", figures.StepName(step)))),
                    Told.Nothing,
                    Told.Nothing,
                    Told.Nothing,
                    Told.Say(voice, "recipe.after-start", ("after", Against(Show.Duration(after.Likely), home is { } there ? Show.Duration(there.After) : null) with { Value = after.Likely.Minutes, Of = path + ".afterMinutes" }), ("range", figures.Range(after, path + ".afterMinutesLow", path + ".afterMinutesHigh") is { IsEmpty: false } range ? Told.Say(voice, "recipe.range-alone", ("range", range)) : Told.Nothing)),
                    "",
                    voice.Member(step.Basis)),
                known[i].Hands.Minutes,
                path + ".handsMinutes");
        }
    }

    /// <summary>When the same was to be done at home, on the clock and within its step; null where home has it otherwise.</summary>
    private (Duration? Start, Duration After)? AtHome(RehearsedStep step, string what, int index) =>
        figures.AtHome(step) is { } home && home.Events.Where(happening => happening.After.Likely.Minutes >= 0).ElementAtOrDefault(index) is { } same && same.What == what
            ? (home.Start is { } start ? start + same.After.Likely : null, same.After.Likely)
            : null;

    private static Fig Against(string here, string? home) => new(here) { Moved = home is not null && home != here };

    private MethodRow Row(RehearsedStep step, Duration hands) => new(
        step.Start is { } start ? Told.Of(figures.Column(start, $"steps.{step.Id}.startMinutes", figures.AtHome(step)?.Start)) : Unknown(),
        figures.StepName(step),
        Told.Nothing,
        Wait(step, hands),
        step.Time is { } time ? hands.Minutes == 0 ? figures.ColumnRange(time, $"steps.{step.Id}.minutes") : RestRange(time, hands) : Told.Nothing,
        MethodTarget.Of(step, figures),
        step.Cue is { } cue ? LiveProse.Of(cue, step.Id, figures.Here, voice) : "",
        voice.Member(step.Basis))
    {
        Notes = notes[step.Id].ToArray(),
    };

    private Told Wait(RehearsedStep step, Duration hands)
    {
        if (step.Time is not { } time)
        {
            return step.SettlesAt is null ? Unknown() : Told.Of(voice.Words["never-here"]);
        }

        if (hands.Minutes == 0)
        {
            return time.Likely.Minutes == 0 ? Told.Nothing : Told.Of(figures.Column(time.Likely, $"steps.{step.Id}.minutes", step.HomeTime));
        }

        var rest = time.Likely - hands;
        return rest.Minutes < 0.5 ? Told.Nothing : Told.Of(new Fig(Show.DurationColumn(rest)) { Moved = step.HomeTime is { } home && Show.DurationColumn(home) != Show.DurationColumn(time.Likely) });
    }

    /// <summary>The range of what is left after the hands; nothing where it is no wider than what is printed, or nothing is left.</summary>
    private Told RestRange(Estimate<Duration> time, Duration hands)
    {
        var (low, high) = (time.Low - hands, time.High - hands);
        return time.Likely.Minutes - hands.Minutes < 0.5 || (high is { } end && Show.DurationColumn(end) == Show.DurationColumn(low))
            ? Told.Nothing
            : Told.Of(voice.Range(low, high));
    }

    private Told Unknown() => new([new Piece.Unknown(voice.Words["not-known"])]);
}

using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>What it comes to, in a few sentences: when it is ready, how warm things go in, how long the rises and the bake take and how one sees that they are done.</summary>
internal sealed class AnswerView(Figures figures)
{
    private readonly Publishing.Wording.Voice voice = figures.Voice;

    public static Told Of(Figures figures) => Told.Join(new AnswerView(figures).Sentences(), " ");

    private IEnumerable<Told> Sentences()
    {
        yield return Ready();
        foreach (var endless in Endless())
        {
            yield return endless;
        }

        foreach (var step in figures.Here.Steps.Where(step => step.Start is { Minutes: < 0 }))
        {
            yield return Told.Say(voice, "recipe.before", ("step", figures.InSentence(step)), ("time", new Fig(Show.Duration(step.Start!.Value * -1)) { Strong = true }));
        }

        yield return Dough();
        yield return Keeps();
        foreach (var step in figures.Here.Steps.Where(step => step.Kind is StepKind.Bulk or StepKind.Proof))
        {
            yield return Rise(step);
        }

        foreach (var step in figures.Here.Steps.Where(step => step.Kind == StepKind.Bake))
        {
            yield return Bake(step);
        }
    }

    private Told Ready()
    {
        if (figures.Here.Steps.Count == 0)
        {
            return Told.Say(voice, "recipe.ready-no-steps", ("unknown", new Piece.Unknown(voice.Words["not-known"])));
        }

        var hands = figures.Time(figures.Here.Hands, "handsMinutes", figures.Home.Hands) with { Strong = false };
        return figures.Here.Total is { } total
            ? Told.Say(
                voice,
                "recipe.ready",
                ("total", figures.Likely(figures.Time(total.Likely, "totalMinutes", figures.Home.Total?.Likely), figures.Range(total, "totalMinutesLow", "totalMinutesHigh"))),
                ("hands", hands))
            : Told.Say(voice, "recipe.ready-unknown", ("unknown", new Piece.Unknown(voice.Words["not-known"])), ("hands", hands));
    }

    /// <summary>What has no end here, where that is why nobody knows how long all takes. A rise without an end says so itself.</summary>
    private IEnumerable<Told> Endless()
    {
        var endless = figures.Here.Total is null
            ? figures.Here.Steps.Where(step => step is { SettlesAt: not null, Time: null, Kind: not (StepKind.Bulk or StepKind.Proof) }).ToArray()
            : [];
        return [.. endless.Select(Rise), .. endless.Length == 0 ? [] : new[] { Told.Of(voice.Words["recipe.never-follows"]) }];
    }

    /// <summary>How warm the dough is after mixing, and what goes in how warm for it.</summary>
    private Told Dough()
    {
        if (figures.Dough is not { } dough)
        {
            return Told.Nothing;
        }

        if (dough.Mixed is not { } mixed)
        {
            var mix = figures.Here.Steps.LastOrDefault(step => step.Component == dough.Id && step.Kind == StepKind.Mix);
            return Told.Say(voice, "recipe.dough-unknown", ("unknown", figures.NotKnown(mix is null ? "" : $"steps.{mix.Id}")));
        }

        var home = figures.Home.Components.FirstOrDefault(component => component.Id == dough.Id)?.Mixed?.Likely;
        var warmth = figures.Warmth(mixed.Likely, $"components.{dough.Id}.mixedCelsius", home);
        var answer = figures.Here.Solutions.Count > 0 ? figures.Here.Solutions[0] : null;
        var names = answer is null ? "" : figures.NamesOf(answer.Lines);
        return answer switch
        {
            { Warmth: { } any } when any.Low.Celsius < 0 || any.High is null || any.High.Value >= figures.Here.Boils => Told.Say(
                voice, "recipe.take-no-lever", ("names", names), ("dough", warmth), ("low", any.Low), ("high", any.High)),
            { Warmth: { } hot, Offered: false } => Told.Say(
                voice, "recipe.take-not-advised", ("names", names), ("dough", warmth), ("warmth", figures.Warmth(hot.Likely, "solve.0.celsius", HomeWarmth(answer), asked: true))),
            { Warmth: { } free } => Told.Say(
                voice,
                "recipe.take",
                ("names", names),
                ("warmth", figures.Warmth(free.Likely, "solve.0.celsius", HomeWarmth(answer), asked: true)),
                ("dough", warmth)),
            { Ice: { } ice } => Told.Say(
                voice, "recipe.take-ice", ("names", names), ("ice", figures.Weight(ice.Likely, "solve.0.iceGrams") with { Strong = true }), ("dough", warmth)),
            _ => Told.Say(voice, "recipe.dough-is", ("dough", warmth)),
        };
    }

    /// <summary>How warm the same parts go in at home, when they all go in alike.</summary>
    private Temperature? HomeWarmth(Solution answer)
    {
        // A dough that is mixed more than once takes some in one mix and some in another.
        var warmths = figures.Home.Steps.Where(step => step.Kind == StepKind.Mix && step.Component == figures.Dough?.Id)
            .SelectMany(step => figures.Home.HeatOf(step.Id)?.Shares ?? [])
            .Where(share => share.Line is { } line && answer.Lines.Contains(line)).Select(share => share.GoesIn?.Celsius).Distinct().ToArray();
        return warmths is [{ } only] ? Temperature.FromCelsius(only) : null;
    }

    /// <summary>Why the dough is not kept as at home, when a person changed the kitchen and it is not; and what is not advised about what was asked for.</summary>
    private Told Keeps()
    {
        if (figures.Here.Solutions is [{ Offered: false } first, ..])
        {
            return Told.Of(voice.Say(
                first.Warmth is null && first.Ice is null ? "recipe.asked-out-of-reach" : "recipe.asked-not-advised", ("names", figures.NamesOf(first.Lines))));
        }

        var names = figures.State.Offer is { } offer ? figures.NamesOf(offer.Lines) : "";
        return figures.State.Setting.Keep switch
        {
            KeepState.DoughUnknown => Told.Of(voice.Words["recipe.keep.dough-unknown"]),
            KeepState.NothingFree => Told.Of(voice.Words["recipe.keep.nothing-free"]),
            KeepState.NotAdvised => Told.Of(voice.Say("recipe.keep.not-advised", ("names", names))),
            KeepState.OutOfReach => Told.Of(voice.Say("recipe.keep.out-of-reach", ("names", names))),
            _ => Told.Nothing,
        };
    }

    private Told Rise(RehearsedStep step) => step switch
    {
        { Time: { } time } => Told.Say(
            voice,
            "recipe.takes",
            ("step", figures.StepName(step)),
            ("time", figures.Likely(step, time)),
            ("until", figures.Until(step))),
        { SettlesAt: { } settles } => Told.Say(
            voice, "recipe.never", ("step", figures.StepName(step)), ("temperature", figures.Warmth(settles, $"steps.{step.Id}.settlesAtCelsius"))),
        _ => Told.Say(voice, "recipe.takes-unknown", ("step", figures.StepName(step)), ("unknown", figures.NotKnown($"steps.{step.Id}"))),
    };

    private Told Bake(RehearsedStep step)
    {
        // A recipe may ask for another mode than the oven is said to run in.
        var isAsked = step.Dial is { } asked && asked.Here.Mode != figures.Here.Kitchen.Oven;
        var dial = figures.Dial(step) is { } set ? Told.Say(voice, isAsked ? "recipe.at-dial-asked" : "recipe.at-dial", ("dial", set)) : Told.Nothing;
        var core = step.EndTemperature is { } end
            ? Told.Say(voice, "recipe.core", ("core", figures.Warmth(end, $"steps.{step.Id}.endCelsius", figures.AtHome(step)?.EndTemperature)))
            : Told.Nothing;
        return step.Time is { } time
            ? Told.Say(
                voice,
                "recipe.bakes",
                ("step", figures.StepName(step)),
                ("time", figures.Likely(step, time)),
                ("dial", dial),
                ("until", figures.Until(step)),
                ("core", core))
            : Rise(step);
    }
}

using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals;

/// <summary>Turns a run into what a person is told.</summary>
internal static class Report
{
    public static Rehearsal Of(RunResult here, RunResult home, IReadOnlyList<Solution> solutions, IReadOnlyList<Finding> findings)
    {
        var stage = here.Stage;
        return new()
        {
            Recipe = stage.Recipe,
            Formula = stage.Formula,
            Kitchen = stage.Kitchen,
            AtHome = ReferenceEquals(here, home),
            Pressure = stage.Pressure,
            Boils = stage.Boils,
            Steps = [.. here.Graph.Steps.Select((step, index) => StepOf(step, index, here, home))],
            Components = [.. stage.Recipe.Components.Select(component => ComponentOf(component, here))],
            Solutions = solutions,
            Total = here.Times.Total is { } total ? TimeOf(total) : null,
            Hands = HandsOf(here),
            Kept = here,
            Findings = [.. OncePerDough(FindingsOf(here, home, findings).DistinctBy(finding => finding.Id), stage.Recipe)],
        };
    }

    /// <summary>
    /// What the home run finds about the author's own measurements holds wherever they are carried to: for every step but those that are done
    /// another way here.
    /// </summary>
    private static IEnumerable<Finding> FindingsOf(RunResult here, RunResult home, IReadOnlyList<Finding> asked) =>
    [
        .. here.Stage.Formula.Findings,
        .. asked,
        .. here.Outcomes.SelectMany(outcome => outcome.Findings),
        .. home.Each().Where(pair => !here.Stage.Request.Changes(pair.Step.Id)).SelectMany(pair => pair.Outcome.Findings),
        .. RehearsalFindings.Of(here, home),
    ];

    /// <summary>What keeps one rise of a dough from being computed keeps them all: it is told at the first.</summary>
    private static IEnumerable<Finding> OncePerDough(IEnumerable<Finding> findings, Recipe recipe) => findings.DistinctBy(finding =>
        finding.Kind == "rise-not-computed" && finding.Place.Split('.') is [_, var step] ? $"{finding.Kind}@{recipe.FindStep(step)?.Component}" : finding.Id);

    public static Estimate<Duration>? TimeOf(PerLane minutes)
    {
        if (!double.IsFinite(minutes.Central))
        {
            return null;
        }

        var spread = Spread.OfLanes(minutes.Values);
        return new(Duration.FromMinutes(spread.Central), Duration.FromMinutes(spread.Low), spread.IsOpenHigh ? null : Duration.FromMinutes(spread.High));
    }

    public static Estimate<Temperature> TemperatureOf(PerLane celsius)
    {
        var spread = Spread.OfLanes(celsius.Values);
        return new(Temperature.FromCelsius(spread.Central), Temperature.FromCelsius(spread.Low), Temperature.FromCelsius(spread.High));
    }

    /// <param name="share">0 to 1.</param>
    public static Estimate<Percent> PercentOf(PerLane share)
    {
        var spread = Spread.OfLanes(share.Values);
        return new(Percent.FromFraction(spread.Central), Percent.FromFraction(spread.Low), Percent.FromFraction(spread.High));
    }

    public static Estimate<Mass> MassOf(PerLane grams)
    {
        var spread = Spread.OfLanes(grams.Values);
        return new(Mass.FromGrams(spread.Central), Mass.FromGrams(spread.Low), Mass.FromGrams(spread.High));
    }

    private static RehearsedStep StepOf(Step step, int index, RunResult here, RunResult home)
    {
        var outcome = here.Outcomes[index];
        var homeMinutes = home.Find(step.Id)?.Minutes;
        return new()
        {
            Id = step.Id,
            Kind = step.Kind,
            Name = step.Name,
            Variant = home.Stage.Recipe.FindStep(step.Id) is { } written ? Variants.Asked(written, here.Stage.Request)?.Id : null,
            IsCooked = step.IsCooked,
            IsAdded = StepGraph.IsAdded(step),
            Component = step.Component,
            Basis = outcome.Basis,
            Start = here.Times.Starts[index] is { } start ? Duration.FromMinutes(start) : null,
            Time = outcome.Minutes is { } minutes ? TimeOf(minutes) : null,
            Hands = step.Hands + Duration.FromMinutes(outcome.Folds.Sum(fold => fold.Hands.Minutes)),
            StartTemperature = Likely(outcome.StartCelsius),
            EndTemperature = Likely(outcome.EndCelsius),
            SettlesAt = outcome.SettlesAtCelsius is { } settles ? Temperature.FromCelsius(settles) : null,
            AlongRadius = outcome.MovedFrom is { } radial ? Duration.FromMinutes(radial) : null,
            Ripe = outcome.Ripe is { } ripe ? new(Duration.FromMinutes(ripe.Earliest), double.IsFinite(ripe.Latest) ? Duration.FromMinutes(ripe.Latest) : null) : null,
            // A rise in which no gas was made at home is not known anywhere.
            Growth = outcome.Growth is { } growth && double.IsFinite(growth.Central) ? growth.Central : null,
            HomeTime = homeMinutes is { } atHome && double.IsFinite(atHome.Central) ? Duration.FromMinutes(atHome.Central) : null,
            Cue = step.Cue,
            Words = step.Words,
            Dial = outcome.Dial,
            Bake = outcome.Bake is { } bake ? bake.Tell : null,
            Cooling = outcome.Cooling,
            Steam = here.Stage.Kitchen.OvenTraits.Steam == Kitchens.OvenSteam.None ? null : step.Steam,
            On = step.On == BakedOn.Stone && Ovens.HearthOf(here.Stage.Kitchen) is null ? BakedOn.Tray : step.On,
            LidOff = step.LidOff,
            Events = [.. outcome.Folds.Where(fold => double.IsFinite(fold.Minutes.Central)).Select(fold => new StepEvent("fold", TimeOf(fold.Minutes)!.Value, fold.Hands))],
            Why = outcome.Why ?? (() => Reason.Leaf(outcome.Minutes is null ? "cannot-be-told" : "stated-by-author", outcome.Minutes is { } told && double.IsFinite(told.Central) ? told.Central : null, "min")),
        };
    }

    private static Temperature? Likely(PerLane? celsius) => celsius is { } known ? Temperature.FromCelsius(known.Central) : null;

    private static RehearsedComponent ComponentOf(Component component, RunResult run)
    {
        var mixed = run.Each().LastOrDefault(pair => pair.Step.Component == component.Id && pair.Outcome.MixedCelsius is not null).Outcome?.MixedCelsius;
        return new(component.Id, component.Kind, mixed is { } celsius ? TemperatureOf(celsius) : null);
    }

    private static Duration HandsOf(RunResult run) => Duration.FromMinutes(run.Each().Sum(pair =>
        pair.Step.Hands.Minutes + pair.Outcome.Folds.Where(fold => double.IsFinite(fold.Minutes.Central)).Sum(fold => fold.Hands.Minutes)));
}

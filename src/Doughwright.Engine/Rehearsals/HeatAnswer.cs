using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals;

/// <summary>Answers "how warm must this go in for the dough to come out as asked", and what the first answer changes in the run.</summary>
/// <param name="Applied">The request with the first answer put in as if a person had asked for it.</param>
internal sealed record HeatAnswer(Request Applied, IReadOnlyList<Solution> Solutions, IReadOnlyList<Finding> Findings)
{
    /// <summary>Yeast is kept below this. Source: yeast-heat.</summary>
    public static Temperature YeastBears { get; } = Temperature.FromCelsius(40);

    /// <summary>Yolk sets from about here. Source: yolk-sets.</summary>
    public static Temperature EggBears { get; } = Temperature.FromCelsius(65);

    public static HeatAnswer Of(Stage stage, IReadOnlyDictionary<string, Anchor> anchors)
    {
        if (stage.Request.Dough is not { } wanted || MixOfDough(stage) is not { } mix)
        {
            return new(stage.Request, [], []);
        }

        var bowl = Run.UntilBowl(stage, anchors, mix);
        var rise = MixStep.RiseHere(mix, anchors.GetValueOrDefault(mix.Id), stage.Priors);
        var free = stage.Request.Free.Count > 0 ? stage.Request.Free : DefaultFree(bowl, stage);
        var first = Solved(bowl, wanted, free, rise, stage);
        var solutions = new List<Solution> { first.Solution };
        if (free.Count > 1)
        {
            solutions.AddRange(free.Select(line => Solve(AtShelf(bowl, free.Where(other => other != line), stage), wanted, [line], rise, stage)));
        }

        return first.Effective is { } celsius
            ? new(WithWarmth(stage, mix, free, celsius), solutions, [])
            : new(stage.Request, solutions, [StepFindings.About(mix, "dough-temperature-out-of-reach", Grade.Warning, false, ("wanted", wanted))]);
    }

    private static Request WithWarmth(Stage stage, Step mix, IReadOnlyList<string> free, double celsius)
    {
        var at = stage.Request.At.ToDictionary();
        foreach (var line in free)
        {
            // A part made beforehand is cooled to it; an ingredient is meant in this bowl only, not where else it goes in.
            at[stage.Recipe.FindComponent(line) is null ? Request.LineOf(mix.Component, line) : line] = Temperature.FromCelsius(celsius);
        }

        return stage.Request with { At = at };
    }

    /// <summary>What delicate things meet in a bowl: the warmest part that is in it with them, unmixed, or the mean where that is warmer.</summary>
    public static IReadOnlyList<(Delicate Thing, Temperature Meets)> MeetingsIn(Bowl bowl)
    {
        var trace = bowl.Trace();
        Temperature Warmest(int index)
        {
            var warmest = Math.Max(trace.Additions[index].WarmestPartCelsius, trace.WarmestMean(index));
            return Temperature.FromCelsius(Math.Max(warmest, trace.WarmestMet(index) ?? warmest));
        }

        return [.. bowl.Delicates.Select(thing => (thing, Warmest(thing.Index)))];
    }

    public static Step? MixOfDough(Stage stage) => stage.Recipe.Steps.LastOrDefault(step =>
        step.Kind == StepKind.Mix && stage.Recipe.FindComponent(step.Component) is { Kind: ComponentKind.Dough });

    public static Solution Solve(Bowl bowl, Temperature wanted, IReadOnlyList<string> free, PerLane rise, Stage stage) =>
        Solved(bowl, wanted, free, rise, stage).Solution;

    /// <param name="Effective">The temperature to run with: that of the answer, or of water that holds as little heat as the ice and the rest together.</param>
    private sealed record Found(Solution Solution, double? Effective);

    private static Found Solved(Bowl bowl, Temperature wanted, IReadOnlyList<string> free, PerLane rise, Stage stage)
    {
        var indices = bowl.IndicesOf(free);
        var others = bowl.With(free.ToDictionary(line => line, _ => 0.0));
        if (!indices.Any(index => bowl.Lines[index].Mass > Mass.Zero) || !others.IsKnown)
        {
            return new(new(free, null, [], false), null);
        }

        var answer = others.Solve(wanted.Celsius, indices, rise);
        var warmed = bowl.With(free.ToDictionary(line => line, _ => answer.Central));
        var met = MeetingsIn(warmed);
        var meetings = met.Select(meeting => new Meeting(meeting.Thing.Name, meeting.Meets)).Distinct().ToList();
        var water = indices is [var only] && bowl.Lines[only].Role == Role.Water ? bowl.Lines[only] : null;
        var solution = new Solution(free, null, meetings, met.All(meeting => meeting.Meets <= meeting.Thing.Bears))
        {
            TradeRule = water is null ? null : TradeRule.Water(stage, wanted, rise.Central),
        };
        if (water is not null && answer.Central < stage.Kitchen.Fridge.Celsius)
        {
            var ice = others.With(new Dictionary<string, double> { [water.Id] = stage.Kitchen.Tap.Celsius }).SolveIce(wanted.Celsius, indices[0], rise);
            return ice.Central > 0 && ice.Central < water.Mass.Grams
                ? new(solution with { Ice = Report.MassOf(ice) }, answer.Central)
                : new(solution with { Offered = false }, null);
        }

        return answer.Central > 0 && answer.Central < stage.Boils.Celsius
            ? new(solution with { Warmth = Report.TemperatureOf(answer) }, answer.Central)
            : new(solution with { Meets = [], Offered = false }, null);
    }

    private static Bowl AtShelf(Bowl bowl, IEnumerable<string> lines, Stage stage) =>
        bowl.With(lines.ToDictionary(line => line, _ => stage.Kitchen.Shelf.Celsius));

    /// <summary>Without a word from the author: the first lever there is.</summary>
    public static IReadOnlyList<string> DefaultFree(Bowl bowl, Stage stage) => Levers(bowl, stage).FirstOrDefault() ?? [];

    /// <summary>
    /// What a baker warms or cools for a dough, the weightiest first: the parts made warm beforehand, or the water, else the milk. What ripens
    /// or soaks has the warmth of its waiting, and is a lever only where there is no other. The trade solves for the water. Source: additive-rule.
    /// </summary>
    public static IEnumerable<IReadOnlyList<string>> Levers(Bowl bowl, Stage stage)
    {
        bool Waits(Formulas.LineFormula line) =>
            stage.Recipe.FindComponent(line.UsesComponent!) is { Kind: ComponentKind.Preferment or ComponentKind.Starter or ComponentKind.Soaker };
        var made = bowl.Lines.Where(line => line.UsesComponent is { } used && used != bowl.GoesOn).ToLookup(Waits);
        var poured = bowl.Lines.Where(line => line.Role is Role.Water or Role.Liquid).OrderByDescending(line => line.Mass.Grams).Take(1);
        var levers = new[] { made[false], poured }.Where(lever => lever.Any()).OrderByDescending(lever => lever.Sum(line => line.Mass.Grams)).ToList();
        return (levers.Count > 0 ? levers : [made[true]]).Where(lever => lever.Any()).Select(lever => lever.Select(line => line.Id).ToList());
    }
}

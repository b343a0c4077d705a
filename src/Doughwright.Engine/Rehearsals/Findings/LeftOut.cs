using Doughwright.Engine.Formulas;
using Doughwright.Engine.Formulas.Checks;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>
/// Time out of the fridge, added up along the way of everything that spoils: a dough of milk or egg from when they go in until it is baked,
/// preferments and other parts that it takes in included; a filling from its pot until it is baked; an icing or cream from when it is made until
/// the end. Minutes are those of the rehearsal, waiting in the room between two steps included; the fridge does not count. Heat begins it anew.
/// Source: home-safety, left-out, cooling-clock.
/// </summary>
internal sealed class LeftOut
{
    private static readonly Duration Icing = Duration.FromHours(2);
    private static readonly Duration Filling = Duration.FromHours(4);
    private static readonly Duration Dough = Duration.FromHours(6);
    private static readonly Temperature Cool = Temperature.FromCelsius(10);

    private readonly RunResult run;
    private readonly Dictionary<string, Standing> clocks = [];

    /// <summary>What was laid into or put onto a part, by part: it goes where that goes.</summary>
    private readonly Dictionary<string, List<string>> carried = [];
    private readonly HashSet<string> baked = [];
    private readonly List<Finding> findings = [];

    private LeftOut(RunResult run) => this.run = run;

    private Recipe Recipe => run.Stage.Recipe;

    public static IEnumerable<Finding> Of(RunResult run)
    {
        var path = new LeftOut(run);
        for (var index = 0; index < run.Graph.Steps.Count; index++)
        {
            if (!StepGraph.IsBeside(run.Graph.Steps[index]))
            {
                path.Take(index);
            }
        }

        foreach (var (part, clock) in path.clocks)
        {
            path.Tell(part, clock);
        }

        return path.findings;
    }

    private void Take(int index)
    {
        var (step, own) = (run.Graph.Steps[index], run.Graph.WorksOn[index]);
        GoIn(index, step, own);
        if (step.Kind == StepKind.Bake || step.IsCooked)
        {
            Heat(index, own);
            return;
        }

        var start = run.Times.Starts[index];
        var at = Duration.FromMinutes(Math.Max(0, start ?? 0));
        var isOut = step.Where != Where.Fridge && run.Stage.AirOf(step, at).At(Duration.Zero) > Cool;
        foreach (var part in With(own))
        {
            if (clocks.TryGetValue(part, out var clock))
            {
                clocks[part] = clock.Through(step, start, MinutesOf(index), isOut, run.Stage.Kitchen.Air.At(at) > Cool);
            }
        }
    }

    /// <summary>Parts that a step takes in, lays in or puts on, and milk or egg that begins to stand with it.</summary>
    private void GoIn(int index, Step step, string own)
    {
        if (StepGraph.Feeds(run.Graph.Steps, index, own) && run.Stage.Formula.FindComponent(own) is { } component)
        {
            foreach (var used in component.Lines.Select(line => line.UsesComponent).OfType<string>())
            {
                if (clocks.Remove(used, out var clock))
                {
                    clocks[own] = Standing.Longer(clocks.GetValueOrDefault(own), clock);
                }
            }
        }

        foreach (var part in run.Graph.FillingsAt(index).Concat(step.Component == own ? [] : [step.Component]))
        {
            Begin(part, run.Times.Starts[index]);
            if (!carried.TryGetValue(own, out var parts))
            {
                carried[own] = parts = [];
            }

            if (!parts.Contains(part))
            {
                parts.Add(part);
            }
        }

        Begin(own, run.Times.Starts[index]);
    }

    private void Begin(string part, double? minute)
    {
        if (!baked.Contains(part) && !clocks.ContainsKey(part) && Spoils(part))
        {
            clocks[part] = Standing.From(minute);
        }
    }

    private bool Spoils(string part) => run.Stage.Formula.FindComponent(part) is { } component && (component.ShareInDough > 0 || Perishable.IsMoist(component))
        && (Perishable.Holds(component, run.Stage.Formula) || (component.Kind == ComponentKind.Filling && Perishable.IsCooked(part, Recipe)));

    /// <summary>What is hot through is told and done with; what was cooked in its pot begins to stand when it comes off the hob.</summary>
    private void Heat(int index, string own)
    {
        var isDough = Recipe.FindComponent(own)?.Kind == ComponentKind.Dough;
        var heated = With(own).ToList();
        foreach (var part in heated)
        {
            if (clocks.Remove(part, out var clock))
            {
                Tell(part, clock);
            }
        }

        if (isDough)
        {
            baked.UnionWith(heated);
        }

        carried.Remove(own);
        if (!isDough)
        {
            Begin(own, run.Times.Starts[index] + MinutesOf(index));
        }
    }

    private IEnumerable<string> With(string own) => [own, .. carried.GetValueOrDefault(own, [])];

    private double MinutesOf(int index) => run.Outcomes[index].Minutes is { Central: var minutes } && double.IsFinite(minutes) ? minutes : 0;

    private void Tell(string part, Standing clock)
    {
        var component = run.Stage.Formula.FindComponent(part)!;
        var (kind, grade, most) = LimitOf(part, component);
        if (clock.Longest is { } step && clock.Minutes > most.Minutes)
        {
            findings.Add(StepFindings.About(
                step, kind, grade, true, ("component", component.Name), ("time", Duration.FromMinutes(clock.Minutes)), ("most", most)));
        }
    }

    /// <summary>What goes onto a bread that is baked is eaten as it is; a filling is moister than a dough, and nothing in it is sour.</summary>
    private (string Kind, Grade Grade, Duration Most) LimitOf(string part, ComponentFormula component) =>
        carried.Any(on => baked.Contains(on.Key) && on.Value.Contains(part)) ? ("dairy-out-too-long", Grade.Warning, Icing)
        : component.Kind != ComponentKind.Filling ? ("perishable-left-out", Grade.Warning, Dough)
        : Perishable.IsCooked(part, Recipe) ? ("cooked-filling-left-out", Grade.Warning, Filling)
        : ("perishable-left-out", Grade.Warning, Filling);
}

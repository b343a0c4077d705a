using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Courses;

/// <summary>Where a part goes into, or onto, another.</summary>
/// <param name="Part">Id of the part.</param>
/// <param name="Step">Index of the step at which it does.</param>
/// <param name="Into">Id of the other part.</param>
/// <param name="Grams">How much of it.</param>
/// <param name="InTheBowl">Whether a mix takes it in; else it is laid on while the step goes on.</param>
internal sealed record Joint(string Part, int Step, string Into, double Grams, bool InTheBowl)
{
    /// <summary>
    /// A part that a line uses goes in where its user is mixed. A wash, glaze or topping goes on at its own step. A filling that no line
    /// uses is laid in where the dough is shaped last before it is baked. What else nobody uses goes nowhere.
    /// </summary>
    public static IReadOnlyList<Joint> Of(RunResult run) =>
        [.. run.Stage.Recipe.Components.Select(part => Used(run, part.Id) ?? LaidOn(run, part) ?? Filled(run, part)).OfType<Joint>()];

    private static Joint? Used(RunResult run, string part)
    {
        foreach (var user in run.Stage.Formula.Components)
        {
            if (user.Lines.FirstOrDefault(line => line.UsesComponent == part) is { } line && TakesIn(run, user.Id, line.Id) is >= 0 and var step)
            {
                return new(part, step, user.Id, line.Mass.Grams, true);
            }
        }

        return null;
    }

    /// <summary>The mix of a part that takes in this line, or its first step when it is never mixed; -1 when it has no step.</summary>
    private static int TakesIn(RunResult run, string user, string line)
    {
        var own = Indices(run).Where(index => run.Graph.Steps[index].Component == user).ToList();
        var mixes = own.Where(index => run.Graph.Steps[index].Kind is StepKind.Mix or StepKind.Scald).ToList();
        var named = mixes.Skip(1).Where(index => run.Graph.Steps[index].Order.Contains(line));
        return named.Concat(mixes).Concat(own).FirstOrDefault(-1);
    }

    private static Joint? LaidOn(RunResult run, Component part)
    {
        var step = Indices(run).FirstOrDefault(index => run.Graph.Steps[index].Component == part.Id && run.Graph.WorksOn[index] != part.Id, -1);
        return step < 0 ? null : new(part.Id, step, run.Graph.WorksOn[step], run.Stage.Component(part.Id).Mass.Grams, false);
    }

    private static Joint? Filled(RunResult run, Component part)
    {
        var shape = run.Graph.LaidInAt(part.Id);
        return shape < 0 ? null : new(part.Id, shape, run.Graph.WorksOn[shape], run.Stage.Component(part.Id).Mass.Grams, false);
    }

    private static IEnumerable<int> Indices(RunResult run) =>
        Enumerable.Range(0, run.Graph.Steps.Count).Where(index => !StepGraph.IsBeside(run.Graph.Steps[index]));
}

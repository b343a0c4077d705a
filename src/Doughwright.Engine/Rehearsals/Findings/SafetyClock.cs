using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>
/// The clock of a scald, a puree or a filling that cools and is baked the same day: from about 60 °C until it is mixed or laid in. Quiet to two hours (one in a
/// kitchen above 32 °C), a note to four, a caution beyond. Source: cooling-clock.
/// </summary>
internal static class SafetyClock
{
    // A scald in a heavy bowl starts below 60 °C, which is where the clock of the rule begins: it is warm from its first minute.
    private const double RunsFromCelsius = 40;
    private static readonly Temperature HotKitchen = Temperature.FromCelsius(32);
    private static readonly Duration Quiet = Duration.FromHours(2);
    private static readonly Duration QuietWhenHot = Duration.FromHours(1);
    private static readonly Duration Caution = Duration.FromHours(4);

    public static IEnumerable<Finding> Of(RunResult run)
    {
        var quiet = run.Stage.Kitchen.Air.Knots[^1].Air > HotKitchen ? QuietWhenHot : Quiet;
        return Spells(run).Select(spell => Of(run, spell, quiet)).OfType<Finding>();
    }

    /// <summary>The steps of each time that a part is hot: poured and then cooled it is one, cooked again it is another.</summary>
    private static IEnumerable<List<int>> Spells(RunResult run) => Enumerable.Range(0, run.Graph.Steps.Count)
        .Where(index => IsWarm(run, index))
        .GroupBy(index => (run.Graph.Steps[index].Component, Enumerable.Range(0, index).Count(earlier =>
            run.Graph.WorksOn[earlier] == run.Graph.Steps[index].Component && (run.Graph.Steps[earlier].IsCooked || run.Graph.Steps[earlier].Kind == StepKind.Bake))))
        .Select(spell => spell.ToList());

    private static bool IsWarm(RunResult run, int index) =>
        run.Graph.Steps[index] is { Kind: StepKind.Cool or StepKind.Scald, IsCooked: false, Where: not Where.Fridge } step
        && run.Outcomes[index].StartCelsius is { Central: >= RunsFromCelsius }
        && run.Stage.Recipe.FindComponent(step.Component) is { Kind: not ComponentKind.Dough };

    /// <summary>Told once, where something can be done about it: at the step that cools it, if there is one.</summary>
    private static Finding? Of(RunResult run, List<int> spell, Duration quiet)
    {
        if (spell.Where(index => run.Outcomes[index].SettlesAtCelsius is not null).Select(index => run.Graph.Steps[index]).FirstOrDefault() is { } settles)
        {
            return StepFindings.About(settles, "stays-warm", Grade.Hint, true, ("limit", quiet));
        }

        var step = spell.Select(index => run.Graph.Steps[index]).FirstOrDefault(each => each.Kind == StepKind.Cool) ?? run.Graph.Steps[spell[0]];
        return WarmFor(run, spell[0]) is not { } time || time <= quiet ? null
            : time > Caution ? StepFindings.About(step, "warm-for-too-long", Grade.Warning, true, ("time", time))
            : StepFindings.About(step, "warm-for-long", Grade.Hint, true, ("time", time));
    }

    /// <summary>From the start of the cooling until something takes the part in, without its time in the fridge.</summary>
    private static Duration? WarmFor(RunResult run, int index)
    {
        var component = run.Graph.Steps[index].Component;
        var own = Enumerable.Range(index, run.Graph.Steps.Count - index).Where(other => run.Graph.WorksOn[other] == component).ToList();
        var cold = own.Where(other => run.Graph.Steps[other].Where == Where.Fridge).Sum(other => run.Outcomes[other].Minutes?.Central ?? 0);
        var taker = Enumerable.Range(index, run.Graph.Steps.Count - index).FirstOrDefault(other => run.Graph.Before[other].Contains(own[^1]), -1);
        var end = taker >= 0 ? run.Times.Starts[taker] : run.Times.Starts[own[^1]] + run.Outcomes[own[^1]].Minutes?.Central;
        return end - run.Times.Starts[index] - cold is { } minutes && double.IsFinite(minutes) ? Duration.FromMinutes(minutes) : null;
    }
}

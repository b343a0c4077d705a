using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>
/// A dough rich in butter, and what is laid into it: too warm, the butter oils out and the crumb comes out greasy and close. Source:
/// butter-in-dough.
/// </summary>
internal static class RichDough
{
    /// <summary>With less butter on the flour the dough binds it whatever its warmth.</summary>
    private static readonly Percent RichFrom = Percent.FromValue(25);

    private static readonly Temperature WorkedInTo = Temperature.FromCelsius(26);
    private static readonly Temperature RisesTo = Temperature.FromCelsius(28);

    public static IEnumerable<Finding> Of(RunResult run)
    {
        var butter = ButterOf(run.Stage.Formula);
        var isRich = butter.Value >= RichFrom.Value;
        for (var index = 0; index < run.Graph.Steps.Count; index++)
        {
            var (step, outcome) = (run.Graph.Steps[index], run.Outcomes[index]);
            if (isRich && LimitOf(step, run) is { } limit && Warmest(outcome) is { } warmest && warmest > limit)
            {
                yield return StepFindings.About(
                    step, "dough-too-warm-for-butter", Grade.Warning, false, ("celsius", warmest), ("butter", butter), ("limit", limit));
            }

            if (isRich && step.Kind == StepKind.Proof && run.Times.Starts[index] is { } start
                && run.Stage.AirOf(step, Duration.FromMinutes(Math.Max(0, start))).At(Duration.Zero) is var air && air > RisesTo)
            {
                yield return StepFindings.About(
                    step, "place-too-warm-for-butter", Grade.Warning, false, ("air", air), ("butter", butter), ("limit", RisesTo));
            }

            foreach (var filling in run.Graph.FillingsAt(index))
            {
                var holds = FillingTo(run.Stage);
                if (WarmthOf(run, index, filling) is { } warmth && warmth > holds)
                {
                    yield return StepFindings.About(
                        step,
                        isRich ? "filling-too-warm-for-butter" : "filling-too-warm",
                        Grade.Warning,
                        false,
                        ("filling", run.Stage.Component(filling).Name),
                        ("celsius", warmth),
                        ("limit", holds));
                }
            }
        }
    }

    /// <summary>What there is to say before a step of a rich dough is put into a place of this warmth.</summary>
    public static IEnumerable<Finding> In(Formula formula, Step step, Temperature place)
    {
        var butter = ButterOf(formula);
        if (butter.Value >= RichFrom.Value && place > RisesTo && formula.FindComponent(step.Component) is { ShareInDough: > 0 })
        {
            yield return StepFindings.About(
                step, "place-too-warm-for-butter", Grade.Warning, false, ("air", place), ("butter", butter), ("limit", RisesTo));
        }
    }

    /// <summary>What is laid into this dough is no warmer.</summary>
    public static Temperature FillingTo(Stage stage) => ButterOf(stage.Formula).Value >= RichFrom.Value ? RisesTo : HeatAnswer.YeastBears;

    /// <summary>Butter on the flour of the dough.</summary>
    private static Percent ButterOf(Formula formula)
    {
        var doughs = formula.Components.Where(component => component.ShareInDough > 0).ToList();
        var flour = formula.Flour.Grams;
        var butter = doughs.SelectMany(component => component.Lines.Select(line => (line, component.ShareInDough)))
            .Where(at => at.line is { UsesComponent: null, Ingredient.MeltsAsButter: true })
            .Sum(at => at.line.Mass.Grams * at.ShareInDough);
        return Percent.FromValue(flour > 0 ? 100 * butter / flour : 0);
    }

    private static Temperature? LimitOf(Step step, RunResult run) => step.Kind switch
    {
        StepKind.Mix when HeatAnswer.MixOfDough(run.Stage)?.Id == step.Id => WorkedInTo,
        StepKind.Bulk or StepKind.Proof => RisesTo,
        _ => null,
    };

    private static Temperature? Warmest(StepOutcome outcome) => (outcome.StartCelsius?.Central, outcome.EndCelsius?.Central ?? outcome.SettlesAtCelsius) switch
    {
        ({ } start, { } end) => Temperature.FromCelsius(Math.Max(start, end)),
        (null, { } end) => Temperature.FromCelsius(end),
        _ => null,
    };

    private static Temperature? WarmthOf(RunResult run, int shape, string filling)
    {
        for (var index = shape - 1; index >= 0; index--)
        {
            if (run.Graph.WorksOn[index] == filling && !StepGraph.IsBeside(run.Graph.Steps[index]))
            {
                return run.Outcomes[index].After.Celsius is { } left ? Temperature.FromCelsius(left.Central) : null;
            }
        }

        // Straight from its jar: as warm as it stands.
        return run.Stage.Component(filling).Mass > Mass.Zero && Matter.Raw(filling, run.Stage).Celsius is { } raw ? Temperature.FromCelsius(raw.Central) : null;
    }
}

using Doughwright.Engine.Formulas;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>What preferments bring into a mix beside the yeast that was weighed.</summary>
/// <param name="Grown">Bread yeast that has grown in them, as fresh yeast, g in every lane.</param>
/// <param name="Ripe">Sourdough, as so much ripe sour: g in every lane.</param>
internal sealed record Leaven(PerLane Grown, PerLane Ripe)
{
    /// <param name="parts">The parts as their own steps left them. A part without a step brings what was put into it.</param>
    public static Leaven Of(ComponentFormula component, IReadOnlyDictionary<string, Portion> parts, Stage stage)
    {
        var nothing = PerLane.Same(0, stage.Lanes);
        var sum = new Leaven(nothing, nothing);
        foreach (var line in component.Lines)
        {
            if (line.UsesComponent is not { } used || stage.Formula.FindComponent(used) is not { } part || part.Mass <= Mass.Zero)
            {
                continue;
            }

            var (share, brings) = (line.Mass / part.Mass, Brings(part, parts, stage));
            sum = new(sum.Grown + (brings.Grown * share), sum.Ripe + (brings.Ripe * share));
        }

        return sum;
    }

    /// <summary>How often the sourdough in a mix has to grow by a factor of e until all of it is as dense as the ripe sour that went in.</summary>
    public PerLane GrowthToRipe(Mass mix) => Ripe.Map(ripe => Elementary.Log(Math.Max(1, mix.Grams / ripe)));

    private static Leaven Brings(ComponentFormula part, IReadOnlyDictionary<string, Portion> parts, Stage stage)
    {
        if (part.Kind == ComponentKind.Starter)
        {
            return new(PerLane.Same(0, stage.Lanes), PerLane.Same(part.Mass.Grams, stage.Lanes));
        }

        var mixed = Of(part, parts, stage);
        if (!parts.TryGetValue(part.Id, out var portion) || portion.Dough is not { State: var state } dough)
        {
            // A levain whose hours the author only states is taken to be ripe after them.
            var isLeft = stage.Recipe.Steps.Any(step => step.Component == part.Id && step.Kind is StepKind.Rest or StepKind.Bulk or StepKind.Proof);
            return isLeft ? mixed with { Ripe = mixed.Ripe.Map(ripe => ripe > 0 ? part.Mass.Grams : 0) } : mixed;
        }

        var coefficients = state.Coefficients;
        if (!coefficients.IsCulture)
        {
            var grown = state.Yeast.Select((yeast, lane) => Math.Max(0, yeast - coefficients.YeastAtFirst[lane]) * part.Flour.Grams / 100);
            return mixed with { Grown = mixed.Grown + new PerLane([.. grown]) };
        }

        // No denser than ripe: what grows on after that falls back.
        var folds = new PerLane([.. state.Aged]) * (dough.Pace ?? PerLane.Same(1, stage.Lanes));
        return mixed with { Ripe = mixed.Ripe.With(folds, (ripe, grown) => Math.Min(part.Mass.Grams, ripe * Elementary.Exp(grown))) };
    }
}

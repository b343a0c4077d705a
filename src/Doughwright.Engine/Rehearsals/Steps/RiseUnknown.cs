using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// What keeps a rise or a ripening from being computed, by its name. Of several things the one that the others follow from: where nobody knows what a line
/// consists of, nobody knows how warm it makes the dough.
/// </summary>
internal static class RiseUnknown
{
    /// <summary>What a rise needs to know of a line, beside its salt.</summary>
    private static readonly Func<Composition, double?>[] Needed =
        [matter => matter.Water, matter => matter.Protein, matter => matter.Fat, matter => matter.Carbohydrate, matter => matter.Sugars, matter => matter.Fibre, matter => matter.Ash];

    /// <summary>The names, under the words that tell of each; empty under those that do not apply.</summary>
    public static (string Name, object Value)[] Of(StepInput input, Portion before)
    {
        var component = input.Stage.Component(input.Step.Component);
        var lines = Unknown(component, input.Stage.Formula).Select(line => line.Name).Distinct().ToArray();
        var isCold = lines.Length == 0 && before.Celsius is null;
        var isLeft = lines.Length == 0 && !isCold;
        var yeast = Rising.YeastOf(component, input.Stage.Formula);
        var isDry = isLeft && (component.Flour <= Mass.Zero || component.Water is { } water && water <= Mass.Zero);
        var isTooMuch = isLeft && !isDry && yeast > component.Flour;
        var isDead = isLeft && !isDry && (before.YeastDied is not null || yeast <= Mass.Zero) && Leaven.Of(component, input.Parts, input.Stage).Ripe.Central <= 0;
        object Named(bool holds, string name) => holds ? name : "";
        return
        [
            ("lines", lines.Length > 0 ? lines : ""),
            ("cold", Named(isCold, component.Name)),
            ("dry", Named(isDry, component.Name)),
            ("yeasty", Named(isTooMuch, component.Name)),
            ("dead", Named(isDead, component.Name)),
            ("open", Named(isLeft && !isDry && !isTooMuch && !isDead, input.Step.Name)),
        ];
    }

    /// <summary>Lines of which too little is known, down through the parts that a component uses; none where that is so little that it does not matter.</summary>
    private static IEnumerable<LineFormula> Unknown(ComponentFormula component, Formula formula)
    {
        var whole = SmallUnknowns.Of(component);
        return SmallUnknowns.WaterOf(component) is not null && Needed.All(constituent => constituent(whole) is not null)
            ? []
            : component.Lines.Where(line => line.Mass > Mass.Zero).SelectMany(line =>
                line.UsesComponent is { } used && formula.FindComponent(used) is { } part ? Unknown(part, formula)
                : line.Water is null || Needed.Any(constituent => constituent(line.Composition) is null) ? [line]
                : []);
    }
}

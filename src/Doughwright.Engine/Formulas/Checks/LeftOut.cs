using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// Moist dairy or egg that stands in the room: an icing or cream beyond two hours, a dough of milk or egg beyond six. Fridge time does not
/// count. A sugar glaze or plain butter holds too little water to matter. Source: home-safety, left-out.
/// </summary>
internal static class LeftOut
{
    private const double MoistFromPercent = 25;
    private static readonly Duration Icing = Duration.FromHours(2);
    private static readonly Duration Dough = Duration.FromHours(6);
    private static readonly Temperature Cool = Temperature.FromCelsius(10);

    public static IEnumerable<Finding> Check(Formula formula) => [.. Icings(formula), .. Doughs(formula)];

    private static IEnumerable<Finding> Icings(Formula formula)
    {
        foreach (var (index, _, part) in Finishing.Of(formula).Where(put => IsMoist(put.Part)))
        {
            var stood = Duration.Zero;
            foreach (var step in formula.Recipe.Steps.Skip(index).Where(step => IsOut(step, part.Id) || IsOut(step, formula.FinalDough()?.Id)))
            {
                stood += Lasts(step) ?? Duration.Zero;
                if (stood > Icing)
                {
                    yield return About(step, "dairy-out-too-long", Grade.Warning, ("component", part.Name), ("time", stood), ("most", Icing));
                    break;
                }
            }
        }
    }

    private static IEnumerable<Finding> Doughs(Formula formula) =>
        from step in formula.Recipe.Steps
        where step.Kind is StepKind.Rest or StepKind.Bulk or StepKind.Proof && step.Where != Where.Fridge && Lasts(step) is { } time && time > Dough
        where formula.Recipe.Home.Air.At(Duration.Zero) > Cool
        let part = formula.FindComponent(step.Component)
        where part is not null && part.ShareInDough > 0 && part.Lines.Any(IsPerishable)
        select About(step, "perishable-left-out", Grade.Warning, ("component", part.Name), ("time", Lasts(step)!.Value), ("most", Dough));

    private static bool IsOut(Step step, string? part) => step.Component == part && step.Where != Where.Fridge;

    private static bool IsMoist(ComponentFormula part) =>
        part.Lines.Any(IsPerishable) && (part.Composition.Water is not { } water || water >= MoistFromPercent);

    private static bool IsPerishable(LineFormula line) =>
        line.Role == Role.Egg
        || (line.Role is not Role.Fat && line.Ingredient is { Composition.Water: >= MoistFromPercent } food && food.Allergens.Contains("milk"));

    private static Duration? Lasts(Step step) => step.Measured?.Time ?? step.End switch
    {
        StepEnd.AfterTime after => after.Time,
        StepEnd.ByCue cue => cue.Estimate,
        _ => null,
    };

    private static Finding About(Step step, string kind, Grade grade, params (string, object)[] arguments) =>
        Report.Make(kind, grade, $"steps.{step.Id}", step.Position, [("step", step.Name), .. arguments]) with { Safety = true };
}

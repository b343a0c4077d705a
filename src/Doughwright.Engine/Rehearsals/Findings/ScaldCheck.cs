using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>A scald that comes out too cool to swell much of its starch. "Gelatinised" is a degree: wheat begins near 60 °C. Source: starch-swells.</summary>
internal static class ScaldCheck
{
    private static readonly Temperature Swells = Temperature.FromCelsius(60);

    /// <summary>Where a scald that is stirred on the hob is taken off it. Source: scald-on-hob.</summary>
    private static readonly Temperature Thick = Temperature.FromCelsius(65);

    public static IEnumerable<Finding> Of(RunResult here) => here.Each().Where(pair => pair.Step.Kind == StepKind.Scald).Select(Of).OfType<Finding>();

    private static Finding? Of((Step Step, StepOutcome Outcome) pair) => pair switch
    {
        // What is to cool on the hob is told as that.
        { Step.IsCooked: true, Outcome: { EndCelsius: { } cooked } outcome } when cooked.Central < Swells.Celsius && !(outcome.StartCelsius?.Central > cooked.Central) => StepFindings.About(
            pair.Step, "scald-cooked-too-cool", Grade.Hint, false, ("celsius", Temperature.FromCelsius(cooked.Central)), ("swells", Swells), ("thick", Thick)),
        { Outcome.MixedCelsius: { } poured } when poured.Central < Swells.Celsius => StepFindings.About(
            pair.Step, "scald-too-cool", Grade.Hint, false, ("celsius", Temperature.FromCelsius(poured.Central)), ("swells", Swells)),
        _ => null,
    };
}

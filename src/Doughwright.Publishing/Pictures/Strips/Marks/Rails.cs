using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Marks;

/// <summary>What is busy when: hands on one rail, hob and oven on the other.</summary>
internal static class Rails
{
    /// <summary>Minutes at which somebody is busy, from and to. What lies before minute 0 is left to the table of the method.</summary>
    public static IEnumerable<(double From, double To)> Hands(Plan plan)
    {
        foreach (var step in plan.Steps)
        {
            var within = step.Step.Events.Sum(happening => happening.Hands.Minutes);
            foreach (var happening in step.Step.Events.Where(happening => happening.Hands.Minutes > 0))
            {
                var from = step.Start + happening.After.Likely.Minutes;
                yield return (from, from + happening.Hands.Minutes);
            }

            if (step.Start >= 0 && step.Step.Hands.Minutes - within > 1e-9)
            {
                yield return (step.Start, step.Start + step.Step.Hands.Minutes - within);
            }
        }
    }

    /// <summary>Hob and oven in use.</summary>
    public static IEnumerable<Fire> Fires(Plan plan)
    {
        foreach (var step in plan.Steps.Where(step => step.End > step.Start))
        {
            if (step.Written?.Where == Where.Hob)
            {
                yield return new(step, null, step.Step.EndTemperature is { } end && end < plan.Rehearsal.Boils ? end : plan.Rehearsal.Boils);
            }
            else if (step.Kind is StepKind.Bake or StepKind.Preheat)
            {
                var dial = step.Step.Dial ?? DialAfter(plan, step);
                var cold = step.Kind == StepKind.Preheat ? plan.Rehearsal.Kitchen.Air.At(Duration.FromMinutes(Math.Max(0, step.Start))) : (Temperature?)null;
                yield return new(step, cold, dial is { } known ? Temperature.FromCelsius(known.Here.Celsius) : null);
            }
        }
    }

    /// <summary>The blocks of hob and oven, between two heights; what heats up rises from the lower one.</summary>
    public static void DrawFires(Canvas canvas, Plan plan, double low, double high)
    {
        foreach (var fire in Fires(plan))
        {
            var (start, end) = (fire.Step.Start, fire.Step.EndOrStart);
            double Share(double minute) => (minute - start) / (end - start);
            Temperature? Warmth(double minute) => (fire.Cold, fire.Hot) switch
            {
                ({ } cold, { } hot) => cold + ((hot - cold) * Share(minute)),
                _ => fire.Hot,
            };
            double Top(double minute) => fire.Cold is null ? high : low + ((high - low) * Share(minute));
            canvas.Band("strand", canvas.PaintOf(start, end, Warmth), _ => low, Top, []);
        }
    }

    private static Engine.Baking.Dial? DialAfter(Plan plan, PlannedStep preheat) =>
        plan.Steps.FirstOrDefault(step => step.Kind == StepKind.Bake && step.Start >= preheat.Start)?.Step.Dial;
}

/// <summary>A hob or an oven in use.</summary>
/// <param name="Cold">Where it starts from while it heats up; null when it is hot.</param>
/// <param name="Hot">What it is set to, or what boils on it; null when it is not said.</param>
internal sealed record Fire(PlannedStep Step, Temperature? Cold, Temperature? Hot);

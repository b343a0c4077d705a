using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>
/// The dough comes out more than 2 °C from what the author measured, or 1 °C when the bulk is a tenth longer or shorter for it. Of a dough that
/// is mixed more than once the last measured mix tells.
/// </summary>
internal static class DoughMissed
{
    private const double Kelvins = 2;
    private const double KelvinsWithTime = 1;
    private const double ShareOfTime = 0.10;

    public static IEnumerable<Finding> Of(RunResult here, RunResult home)
    {
        foreach (var mixes in here.Each().Where(pair => pair.Step is { Kind: StepKind.Mix, Measured.Temperature: not null }).GroupBy(pair => pair.Step.Component))
        {
            var (step, outcome) = mixes.Last();
            // Of a dough whose yeast died nobody takes new times; that it died says how much too warm it is.
            if (outcome.After.YeastDied is not null || outcome.EndCelsius is not { } mixed || home.Find(step.Id)?.EndCelsius is not { } wanted || here.Stage.Request.Dough is not null)
            {
                continue;
            }

            var off = Math.Abs(mixed.Central - wanted.Central);
            if (off > Kelvins || (off > KelvinsWithTime && BulkOff(step, here, home) > ShareOfTime))
            {
                yield return Missed(step, mixed, wanted.Central, here);
            }
        }
    }

    private static double BulkOff(Step mix, RunResult here, RunResult home)
    {
        var bulk = here.Graph.Steps.FirstOrDefault(step => step.Kind == StepKind.Bulk && step.Component == mix.Component);
        return bulk is not null && here.Find(bulk.Id)?.Minutes is { } now && home.Find(bulk.Id)?.Minutes is { } then
            ? Math.Abs((now.Central / then.Central) - 1)
            : 0;
    }

    private static Finding Missed(Step step, PerLane mixed, double wantedCelsius, RunResult here)
    {
        var wanted = Temperature.FromCelsius(wantedCelsius);
        (string, object)[] arguments =
        [
            ("reached", Temperature.FromCelsius(mixed.Central)),
            ("difference", TemperatureDelta.FromKelvins(Math.Abs(mixed.Central - wantedCelsius))),
            ("wanted", wanted),
        ];
        if (here.BowlOf(step) is { IsKnown: true } bowl)
        {
            var rise = mixed - bowl.Mixed(PerLane.Same(0, here.Stage.Lanes));
            var answers = HeatAnswer.Levers(bowl, here.Stage).Select(lever => HeatAnswer.Solve(bowl, wanted, lever, rise, here.Stage)).ToList();
            if (answers.Find(solution => solution is { Offered: true, Warmth: not null } or { Offered: true, Ice: not null }) is { } offer)
            {
                return Offered(step, arguments, offer, bowl, here.Stage);
            }

            if (answers.Find(solution => solution is { Offered: false, Warmth: not null }) is { } tooHot && Limit(tooHot, bowl) is var (thing, meets))
            {
                return StepFindings.About(
                    step,
                    "dough-temperature-missed-limit",
                    Grade.Warning,
                    false,
                    [.. arguments, ("free", NamesOf(tooHot, bowl)), ("needed", tooHot.Warmth!.Value.Likely), ("thing", thing.Name), ("meets", meets), ("bears", thing.Bears)]);
            }
        }

        return StepFindings.About(step, "dough-temperature-missed-no-offer", Grade.Warning, false, arguments);
    }

    /// <summary>What would meet more heat than it bears, and how much.</summary>
    private static (Delicate Thing, Temperature Meets)? Limit(Solution answer, Bowl bowl) => HeatAnswer
        .MeetingsIn(bowl.With(answer.Lines.ToDictionary(line => line, _ => answer.Warmth!.Value.Likely.Celsius)))
        .Where(meeting => meeting.Meets > meeting.Thing.Bears)
        .Select(meeting => ((Delicate, Temperature)?)meeting)
        .FirstOrDefault();

    private static string[] NamesOf(Solution answer, Bowl bowl) => [.. answer.Lines.Select(line => bowl.Lines.First(other => other.Id == line).Name)];

    private static Finding Offered(Step step, (string, object)[] arguments, Solution offer, Bowl bowl, Stage stage)
    {
        (string, object)[] free = [.. arguments, ("free", NamesOf(offer, bowl))];
        if (offer.Ice is { } ice)
        {
            return StepFindings.About(step, "dough-temperature-missed-ice", Grade.Warning, false, [.. free, ("ice", ice.Likely)]);
        }

        var celsius = offer.Warmth!.Value.Likely;
        var runsFromTheTap = offer.Lines.All(line => bowl.Lines.First(other => other.Id == line).Role == Role.Water) && celsius >= stage.Kitchen.Tap;
        var kind = celsius < stage.Kitchen.Air.At(Duration.Zero) && !runsFromTheTap ? "dough-temperature-missed-warm" : "dough-temperature-missed";
        return StepFindings.About(step, kind, Grade.Warning, false, [.. free, ("offered", celsius)]);
    }
}

using Doughwright.Engine.Formulas;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Courses;

/// <summary>Takes the heat balance of a mix apart, in the likely lane.</summary>
internal static class HeatBalances
{
    /// <summary>Where a thing goes in as warm as the mix becomes, its heat capacity is taken over so many kelvins around.</summary>
    private const double Around = 1e-3;

    public static HeatBalance? Of(RunResult run, string id)
    {
        var index = run.Graph.Steps.ToList().FindIndex(step => step.Id == id);
        if (index < 0 || run.BowlOf(run.Graph.Steps[index]) is not { IsKnown: true } bowl || run.Outcomes[index].MixedCelsius is not { } known)
        {
            return null;
        }

        var (step, mixed, warmths) = (run.Graph.Steps[index], known.Central, bowl.Parts(0));
        var conditions = bowl.Conditions(0, 0);
        var free = FreeLines(run, step.Id);
        // What cannot be weighed is no giver of nothing: the balance is without it, as every sum is.
        var shares = bowl.Lines.Select((line, part) => (line, part)).Where(at => at.line.IsMassKnown).Select(at => Share(at.line, at.part)).ToList();
        shares.Add(Handling(run, index, bowl, mixed));
        if (bowl.Balance.VesselJoulesPerKelvin is > 0 and var vessel)
        {
            var from = conditions.VesselCelsius;
            shares.Add(new(HeatGiver.Vessel, null, step.Vessel?.Mass, vessel / 1000, Temperature.FromCelsius(from), vessel * (from - mixed) / 1000, false));
        }

        return new(step.Id, step.Component, Temperature.FromCelsius(mixed), shares);

        HeatShare Share(LineFormula line, int part) => new(
            line.UsesComponent is null ? HeatGiver.Ingredient : HeatGiver.Part,
            line.Id,
            line.Mass,
            CapacityOf(bowl.Balance, part, warmths[part], mixed, conditions) / 1000,
            Temperature.FromCelsius(warmths[part]),
            bowl.Balance.Gives(part, warmths[part], mixed, conditions) / 1000,
            free.Contains(line.Id));
    }

    /// <summary>
    /// The handling rise is one figure for work and for what the dough loses to the room meanwhile. Where the loss is greater, the air takes it.
    /// </summary>
    private static HeatShare Handling(RunResult run, int index, Bowl bowl, double mixed)
    {
        var conditions = bowl.Conditions(0, 0);
        var joules = bowl.Balance.Takes(bowl.Balance.Mixed(bowl.Parts(0), conditions), mixed, conditions);
        var start = Duration.FromMinutes(run.Times.Starts[index] ?? 0);
        return joules >= 0
            ? new(HeatGiver.Work, null, null, null, null, joules / 1000, false)
            : new(HeatGiver.Air, null, null, null, run.Stage.AirOf(run.Graph.Steps[index], start).At(Duration.Zero), joules / 1000, false);
    }

    private static double CapacityOf(MixingBalance balance, int part, double from, double to, in MixingConditions conditions)
    {
        var (high, low) = Math.Abs(from - to) > Around ? (from, to) : (to + Around, to - Around);
        return balance.Gives(part, high, low, conditions) / (high - low);
    }

    private static IReadOnlyList<string> FreeLines(RunResult run, string step)
    {
        var request = run.Stage.Request;
        if (HeatAnswer.MixOfDough(run.Stage) is not { } mix || mix.Id != step)
        {
            return [];
        }

        return request.Free.Count > 0 || request.Dough is null ? request.Free : HeatAnswer.DefaultFree(run.BowlOf(mix)!, run.Stage);
    }
}

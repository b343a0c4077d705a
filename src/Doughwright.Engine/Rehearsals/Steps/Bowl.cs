using Doughwright.Engine.Formulas;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>A bowl with what goes into it, ready to be asked how warm it becomes.</summary>
internal sealed class Bowl
{
    private readonly IReadOnlyList<PerLane?> warmths;
    private readonly double vesselCelsius;
    private readonly Priors priors;

    private Bowl(
        MixingBalance balance, IReadOnlyList<LineFormula> lines, IReadOnlyList<PerLane?> warmths, double vesselCelsius, Priors priors, string? goesOn) =>
        (Balance, Lines, this.warmths, this.vesselCelsius, this.priors, GoesOn) = (balance, lines, warmths, vesselCelsius, priors, goesOn);

    /// <summary>Lines of which nobody knows how much heat they hold.</summary>
    public required IReadOnlyList<LineFormula> Unknown { get; init; }

    /// <summary>What heat hurts: yeast and egg, by themselves or inside a part.</summary>
    public required IReadOnlyList<Delicate> Delicates { get; init; }

    /// <summary>The dough that is in the bowl already, by its component; null in a first mix. Nobody warms or cools it beforehand.</summary>
    public string? GoesOn { get; }

    public MixingBalance Balance { get; }

    /// <summary>In the order in which they are added.</summary>
    public IReadOnlyList<LineFormula> Lines { get; }

    /// <summary>Whether anything is in it, and of all that weighs something how warm it is and how much heat it holds.</summary>
    public bool IsKnown => Balance.HoldsSomething && Unknown.Count == 0
        && Enumerable.Range(0, Lines.Count).All(index => warmths[index] is not null || Lines[index].Mass == Quantities.Mass.Zero);

    /// <param name="parts">Portions of the components that go in.</param>
    public static Bowl Of(Step step, ComponentFormula component, IReadOnlyDictionary<string, Portion> parts, Stage stage)
    {
        var lines = InOrder(step, MixLines.Of(step, component, parts, stage));
        var balance = new MixingBalance(
            [.. lines.Select(line => Matter.PartOf(line, parts))],
            step.Vessel is { } vessel && !MixLines.GoesOn(lines, component) ? DefaultHeats.JoulesPerKelvinOf(vessel) ?? 0 : 0,
            FatMelting.Butter);
        var warmths = lines.Select(line => WarmthOf(component.Id, line, parts, stage)).ToList();
        return new(balance, lines, warmths, step.Vessel is { } bowl ? stage.WarmthOf(bowl) : stage.Kitchen.Shelf.Celsius, stage.Priors, MixLines.GoesOn(lines, component) ? component.Id : null)
        {
            Delicates = Delicate.In(lines, component.Id, parts, stage),
            Unknown = [.. lines.Where(line => !Matter.IsHeatKnown(line, parts) && !SmallUnknowns.IsSmall(line, lines))],
        };
    }

    /// <summary>The same bowl with other temperatures of some lines, the same in every lane.</summary>
    public Bowl With(IReadOnlyDictionary<string, double> celsius) => new(
        Balance,
        Lines,
        [.. warmths.Select((warmth, index) => celsius.TryGetValue(Lines[index].Id, out var set) ? PerLane.Same(set, priors.Lanes) : warmth)],
        vesselCelsius,
        priors,
        GoesOn)
    {
        Unknown = Unknown,
        Delicates = Delicates,
    };

    /// <summary>How warm it becomes with this handling rise, in every lane.</summary>
    public PerLane Mixed(PerLane rise) => Each(rise, (parts, conditions) => Balance.Mixed(parts, conditions));

    /// <summary>The handling rise that a measured temperature means, in every lane.</summary>
    public PerLane RiseFor(double measuredCelsius) =>
        Each(PerLane.Same(0, priors.Lanes), (parts, conditions) => Balance.RiseFor(measuredCelsius, parts, conditions));

    /// <summary>The one temperature of the free lines that gives the dough asked for, in every lane.</summary>
    public PerLane Solve(double wantedCelsius, int[] free, PerLane rise) =>
        Each(rise, (parts, conditions) => Balance.Solve(wantedCelsius, free, parts, conditions));

    /// <summary>Grams of ice among a water part, the rest of it as warm as set, in every lane.</summary>
    public PerLane SolveIce(double wantedCelsius, int water, PerLane rise) =>
        Each(rise, (parts, conditions) => Balance.SolveIce(wantedCelsius, water, parts, conditions));

    /// <summary>Where lines stand in the order of adding; lines that are not in the bowl are left out.</summary>
    public int[] IndicesOf(IReadOnlyList<string> lines) =>
        [.. Enumerable.Range(0, Lines.Count).Where(index => lines.Contains(Lines[index].Id))];

    /// <summary>What happens in the bowl as the parts go in, in the likely lane.</summary>
    public MixingTrace Trace() => Balance.Trace(Parts(0), Conditions(0, 0));

    /// <summary>Temperatures of the parts in one lane.</summary>
    public double[] Parts(int lane) => [.. warmths.Select(warmth => warmth is { } known ? known[lane] : 0)];

    public MixingConditions Conditions(int lane, double rise) => new(vesselCelsius, rise, priors.Melting[lane]);

    private PerLane Each(PerLane rise, Func<double[], MixingConditions, double> ask)
    {
        if (!IsKnown)
        {
            throw new InvalidOperationException("A bowl with a part of unknown heat has no temperature.");
        }

        var answers = new double[priors.Lanes];
        for (var lane = 0; lane < answers.Length; lane++)
        {
            answers[lane] = ask(Parts(lane), Conditions(lane, rise[lane]));
        }

        return new(answers);
    }

    private static List<LineFormula> InOrder(Step step, IReadOnlyList<LineFormula> lines) => [.. lines.OrderBy(line => Rank(step, line))];

    private static int Rank(Step step, LineFormula line)
    {
        for (var index = 0; index < step.Order.Count; index++)
        {
            if (step.Order[index] == line.Id)
            {
                return index;
            }
        }

        // What the author's order leaves out goes in first, as listed: flour in the bowl, say.
        return -1;
    }

    private static PerLane? WarmthOf(string component, LineFormula line, IReadOnlyDictionary<string, Portion> parts, Stage stage) =>
        line.UsesComponent is { } used && parts.TryGetValue(used, out var portion)
            ? stage.AskedWithoutCooling(used) is { } asked ? PerLane.Same(asked.Celsius, stage.Lanes) : portion.Celsius
            : PerLane.Same(stage.WarmthOf(component, line.Source), stage.Lanes);
}

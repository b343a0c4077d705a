using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>What the steps in which a dough rises have in common: the dough drifts towards the air, and rises by its own temperature.</summary>
internal static class Rising
{
    /// <summary>Steps into which the author's own time is cut; the run elsewhere uses the same length of step.</summary>
    public const int StepsAtHome = 40;

    /// <summary>Steps that a run elsewhere goes on before it looks whether every lane has ended.</summary>
    private const int StepsAtATime = 8;

    /// <summary>How many times the author's own time a run goes on before it says that the step does not end here.</summary>
    public const int Patience = 50;

    /// <summary>No step of a drift or a rise is longer: a rise of a week is cut into more.</summary>
    public static readonly Duration LongestStep = Duration.FromMinutes(15);

    /// <summary>
    /// A dough right after mixing, before any gas; null when it holds neither yeast nor sourdough, or its composition is not known. Where there is
    /// bread yeast it raises the dough, and what sourdough there is counts for nothing beside it.
    /// </summary>
    /// <param name="leaven">What the parts it takes in bring.</param>
    public static RiseDough? DoughOf(ComponentFormula component, Stage stage, Leaven leaven)
    {
        if (MatterOf(component, stage.Formula) is not { } matter || matter.Flour.Grams <= 0 || matter.Water.Grams <= 0)
        {
            return null;
        }

        var (parameters, perFlour) = (stage.Priors.Rise, 100 / matter.Flour.Grams);
        if (matter.FreshYeast.Grams > 0)
        {
            var bread = RiseDough.Of(matter, parameters);
            return Held(bread with { FreshYeastGrams = [.. bread.FreshYeastGrams.Select((yeast, lane) => yeast + (leaven.Grown[lane] * perFlour))] });
        }

        if (leaven.Ripe.Central <= 0)
        {
            return null;
        }

        var culture = Culture.In(component.Mass, matter.Flour, parameters);
        var density = leaven.Ripe * (1 / component.Mass.Grams);
        return Held(RiseDough.Of(matter with { FreshYeast = leaven.Ripe.Central * Mass.FromGrams(Culture.FreshPerGramOfRipe) }, parameters) with
        {
            Culture = culture,
            FreshYeastGrams = [.. culture.FreshAtMost.Select((most, lane) => most * density[lane])],
        });
    }

    /// <summary>No dough holds more yeast than flour, put in or grown: of such a thing nothing can be told.</summary>
    private static RiseDough? Held(RiseDough dough) => dough.FreshYeastGrams.All(grams => grams <= 100) ? dough : null;

    /// <summary>Air at the end of each step of a run that begins at <paramref name="from"/>.</summary>
    private static double[] AirOver(StepInput input, Duration from, Duration step, int steps) =>
        [.. Enumerable.Range(1, steps).Select(index => input.Air.At(from + (step * (index - 0.5))).Celsius)];

    /// <summary>Takes a body some steps on through what is around it, and records its mean and its shells in every lane.</summary>
    public static void Advance(ConductionRun body, StepInput input, Duration from, Duration step, int steps, Span<double> mean, Span<double> shells)
    {
        if (input.Around is { } around)
        {
            body.AdvanceEach(around.Over(from, step, steps, body.LaneCount), mean, shells);
        }
        else
        {
            body.Advance(AirOver(input, from, step, steps), mean, shells: shells);
        }
    }

    /// <summary>Fewest steps of a drift whose length is known.</summary>
    public const int StepsOfDrift = 24;

    /// <summary>Follows a body that drifts towards the air for a known time.</summary>
    public static DriftRun Drift(StepInput input, Body body, PerLane start, Duration time)
    {
        var steps = StepsOver(time);
        return Drift(input, body, start, time / steps, steps);
    }

    /// <summary>Steps into which a drift of a known length is cut.</summary>
    public static int StepsOver(Duration time) => Math.Max(StepsOfDrift, (int)Math.Ceiling(time / LongestStep));

    /// <summary>The same in steps of a given length.</summary>
    public static DriftRun Drift(StepInput input, Body body, PerLane start, Duration step, int steps)
    {
        var run = Bodies.Drift(input, body, start, step);
        var shares = run.Grid.ShellShares;
        var (mean, shells) = (new double[steps * input.Lanes], new double[steps * input.Lanes * shares.Length]);
        Advance(run, input, Duration.Zero, step, steps, mean, shells);
        return new(new(start.Values, mean, step) { Shells = shells, Shares = shares });
    }

    /// <summary>Lets the dough of a phase drift and rise until every lane that has an end has met the end of the stage, or patience ends.</summary>
    public static void Until(RisePhase phase, RiseState state, RiseStage stage)
    {
        var (input, step) = (phase.Input, phase.StepLength);
        var body = Bodies.Drift(input, phase.Body, phase.Start, step);
        state.Begin(stage);
        var shares = body.Grid.ShellShares;
        var (mean, shells) = (new double[StepsAtATime * input.Lanes], new double[StepsAtATime * input.Lanes * shares.Length]);
        for (var taken = 0; step * taken < phase.Patience && IsGoing(state, stage); taken += StepsAtATime)
        {
            Advance(body, input, step * taken, step, StepsAtATime, mean, shells);
            state.Advance(new RiseWarmth(mean, shells, shares, input.Lanes), step);
        }
    }

    private static bool IsGoing(RiseState state, RiseStage stage)
    {
        for (var lane = 0; lane < state.Lanes; lane++)
        {
            if (double.IsFinite(stage.UntilGrowth[lane]) && !double.IsFinite(state.StoppedMinutes[lane]))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Pressure of the air, the same in every lane.</summary>
    public static double[] Pascals(Stage stage) => PerLane.Same(stage.Pressure.Pascals, stage.Lanes).Values;

    public static DoughMatter? MatterOf(ComponentFormula component, Formula formula)
    {
        var grams = component.Mass.Grams / 100;
        var composition = SmallUnknowns.Of(component);
        if (SmallUnknowns.WaterOf(component) is not { } water || composition.Fat is not { } fat || composition.Sugars is not { } sugars)
        {
            return null;
        }

        var yeast = Yeast(component, formula);
        if (yeast.Fresh > component.Flour)
        {
            // More yeast than flour is a slip of the pen that its own check tells.
            return null;
        }

        // Where nobody knows what one line holds of it, the salt of the others is there all the same.
        var salt = composition.Salt is { } share ? share * grams : KnownSalt(component, formula).Grams;
        var sugar = Math.Max(0, sugars - (composition.Lactose ?? 0)) * grams;
        var other = component.Mass.Grams - component.Flour.Grams - water.Grams - salt - sugar - (fat * grams) - yeast.Dry.Grams;
        return new()
        {
            Flour = component.Flour,
            Water = water,
            Salt = Mass.FromGrams(salt),
            Sugar = Mass.FromGrams(sugar),
            FreshYeast = yeast.Fresh,
            Fat = Mass.FromGrams(fat * grams),
            OtherSolids = Mass.FromGrams(Math.Max(0, other)),
        };
    }

    /// <summary>All yeast of a component and of what it uses, as fresh yeast.</summary>
    public static Mass YeastOf(ComponentFormula component, Formula formula) => Yeast(component, formula).Fresh;

    /// <summary>All yeast of a component and of what it uses: as fresh yeast, and as weighed.</summary>
    private static (Mass Fresh, Mass Dry) Yeast(ComponentFormula component, Formula formula)
    {
        var (fresh, dry) = (Mass.Zero, Mass.Zero);
        foreach (var line in component.Lines)
        {
            if (line.UsesComponent is { } used && formula.FindComponent(used) is { } part && part.Mass > Mass.Zero)
            {
                var inner = Yeast(part, formula);
                var share = line.Mass / part.Mass;
                (fresh, dry) = (fresh + (inner.Fresh * share), dry + (inner.Dry * share));
            }
            else if (line is { Role: Role.Yeast, Ingredient.Yeast: { } kind })
            {
                (fresh, dry) = (fresh + YeastEquivalents.ToFresh(line.Mass, kind), dry + line.Mass);
            }
        }

        return (fresh, dry);
    }

    /// <summary>The salt of the lines whose salt is known, down through the parts a component uses.</summary>
    private static Mass KnownSalt(ComponentFormula component, Formula formula)
    {
        var salt = Mass.Zero;
        foreach (var line in component.Lines)
        {
            if (line.UsesComponent is { } used && formula.FindComponent(used) is { } part && part.Mass > Mass.Zero)
            {
                salt += KnownSalt(part, formula) * (line.Mass / part.Mass);
            }
            else
            {
                salt += line.Mass * ((line.Composition.Salt ?? 0) / 100);
            }
        }

        return salt;
    }
}

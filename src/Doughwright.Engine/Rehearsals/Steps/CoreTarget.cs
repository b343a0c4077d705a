using Doughwright.Engine.Heat;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>How far a core must come: the share of the way from the dough's temperature to boiling.</summary>
/// <remarks>
/// Where the author gives no core it is drawn from what such breads are baked to at the sea: enriched 86 to 98 °C, most likely 93; lean 93 to
/// 99, most likely 96.5. Source: core-bands. A home on a mountain has the same share of a shorter way. A core that the author's kitchen can
/// reach is carried as a share too, asked or measured; one that no crumb has even there is refused, and so is one that the dough has when it goes in.
/// </remarks>
/// <param name="IsMeasured">Whether the author asked for it or measured it.</param>
internal sealed record CoreTarget(PerLane Share, bool IsMeasured, Finding? Refusal)
{
    private static readonly (double Low, double Likely, double High) Enriched = (86, 93, 98);
    private static readonly (double Low, double Likely, double High) Lean = (93, 96.5, 99);
    private static readonly Temperature UnusualBelow = Temperature.FromCelsius(86);
    private static readonly Temperature UnusualAbove = Temperature.FromCelsius(100);

    /// <summary>Below it egg, and flour with it, is not cooked through: 160 °F for dishes with egg. Source: egg-core.</summary>
    private static readonly Temperature Cooked = Temperature.FromCelsius(71);

    private static readonly Temperature BoilsAtTheSea = SaturatedWater.BoilingPoint(Length.Zero);

    private const double LeanLimit = 8;

    public PerLane Celsius(PerLane start, Temperature boils) => start.With(Share, (from, share) => from + (share * (boils.Celsius - from)));

    public static CoreTarget Of(Step step, Stage stage, Anchor? anchor, PerLane start)
    {
        if (anchor is { Growth: [var carried, ..] })
        {
            return new(carried, false, null);
        }

        var stated = step.End is StepEnd.AtCore end ? end.Temperature : BelievableCore(step, stage.Boils);
        if (step.End is StepEnd.AtCore { Temperature: var asked } && asked >= stage.Boils)
        {
            var refusal = StepFindings.About(step, "core-above-boiling", Grade.Error, false, ("core", asked), ("boils", stage.Boils), ("altitude", stage.Kitchen.Altitude), ("offered", Temperature.FromCelsius(Math.Floor(stage.Boils.Celsius - 1))));
            return new(PerLane.Same(double.NaN, stage.Lanes), false, refusal);
        }

        var (core, boils) = stated is { } known ? (PerLane.Same(known.Celsius, stage.Lanes), stage.Boils) : (Drawn(stage), BoilsAtTheSea);
        if (start.Central >= core.Central)
        {
            var refusal = StepFindings.About(
                step, "core-not-above-dough", Grade.Error, false, ("core", Temperature.FromCelsius(core.Central)), ("dough", Temperature.FromCelsius(start.Central)));
            return new(PerLane.Same(double.NaN, stage.Lanes), false, refusal);
        }

        return new(core.With(start, (celsius, from) => (celsius - from) / (boils.Celsius - from)), stated is not null, null);
    }

    /// <summary>What the author measured, unless no crumb gets so hot.</summary>
    private static Temperature? BelievableCore(Step step, Temperature boils) => step.Measured?.Temperature is { } core && core < boils ? core : null;

    /// <summary>A core that leaves the middle raw, or that the author measured and no such bread is baked to, or that no crumb can have here.</summary>
    public static IEnumerable<Finding> Unusual(Step step, Stage stage)
    {
        if ((step.Measured?.Temperature ?? (step.End as StepEnd.AtCore)?.Temperature) is { } ends && Raw(step, stage, ends) is { } raw)
        {
            yield return raw;
            yield break;
        }

        if (step.Measured?.Temperature is not { } core)
        {
            yield break;
        }

        if (core >= stage.Boils)
        {
            yield return StepFindings.About(
                step, "core-measured-above-boiling", Grade.Warning, false, ("core", core), ("boils", stage.Boils), ("altitude", stage.Kitchen.Altitude));
        }
        else if (core < UnusualBelow || core > UnusualAbove)
        {
            yield return StepFindings.About(step, "core-unusual", Grade.Warning, false, ("core", core), ("low", UnusualBelow), ("high", UnusualAbove));
        }
    }

    /// <summary>The middle is still raw, and raw egg and raw flour can make people ill; null where neither is in it.</summary>
    public static Finding? Raw(Step step, Stage stage, Temperature core)
    {
        var eggs = NamesOf(step.Component, Role.Egg, stage).Distinct().ToArray();
        var flours = NamesOf(step.Component, Role.Flour, stage).Distinct().ToArray();
        return flours.Length == 0 || core >= Cooked ? null
            : eggs.Length > 0 ? StepFindings.About(step, "core-leaves-egg-raw", Grade.Warning, true, ("core", core), ("cooked", Cooked), ("egg", eggs), ("flour", flours))
            : StepFindings.About(step, "core-leaves-flour-raw", Grade.Warning, true, ("core", core), ("cooked", Cooked), ("flour", flours));
    }

    /// <summary>What of a kind is in a part, down through the parts it takes in, but for those that were cooked by themselves.</summary>
    private static IEnumerable<string> NamesOf(string part, Role what, Stage stage) =>
        (stage.Formula.FindComponent(part)?.Lines ?? []).Where(line => line.Mass > Mass.Zero).SelectMany(line =>
            line.UsesComponent is not { } used ? line.Role == what ? [line.Name] : []
            : Delicate.Holds(used, what, stage) ? NamesOf(used, what, stage) : []);

    /// <summary>Two half normals that meet at the likely core and end at the edges of the band.</summary>
    private static PerLane Drawn(Stage stage)
    {
        // What is known of sugar and fat is enough: more of it would only make the dough richer.
        var enriched = 100 * ((stage.Formula.Sugar.AtLeast + stage.Formula.Fat.AtLeast) / stage.Formula.Flour) > LeanLimit;
        var (low, likely, high) = enriched ? Enriched : Lean;
        return stage.Priors.Core.Map(z => likely + (z < 0 ? (likely - low) : (high - likely)) * (z / (1 + Math.Abs(z))));
    }
}

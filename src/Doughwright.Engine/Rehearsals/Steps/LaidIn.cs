using Doughwright.Engine.Heat;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// A filling goes into the dough while it is shaped: from then on its weight, its heat and its warmth are the piece's. A thin layer and a thin
/// sheet of dough are soon as warm as each other, so the piece has one temperature.
/// </summary>
internal static class LaidIn
{
    public static StepOutcome To(StepInput input, StepOutcome shaped)
    {
        if (shaped.After.Celsius is not { } dough)
        {
            return shaped;
        }

        var (known, findings) = Portions(input);
        if (known.Count == 0)
        {
            return shaped with { Findings = [.. shaped.Findings, .. findings] };
        }

        var filled = Together(shaped.After, known, input.Stage.Priors);
        var warmer = filled.Celsius!.Value.Central - dough.Central;
        return shaped with
        {
            After = filled,
            EndCelsius = filled.Celsius,
            Findings = [.. shaped.Findings, .. findings],
            Way = shaped.Way is { } way ? () => Warmed(way(), warmer) : null,
        };
    }

    /// <summary>The fillings of a step as they lie ready; one whose heat nobody knows is left out, and that is told.</summary>
    private static (List<Portion> Known, List<Finding> Findings) Portions(StepInput input)
    {
        var (known, findings) = (new List<Portion>(), new List<Finding>());
        foreach (var id in input.Fillings)
        {
            var component = input.Stage.Component(id);
            var portion = input.Parts.GetValueOrDefault(id) ?? (component.Mass > Mass.Zero ? Matter.Raw(id, input.Stage) : null);
            if (portion is { Celsius: not null } && component.Lines.All(line => Matter.IsHeatKnown(line, input.Parts) || SmallUnknowns.IsSmall(line, component.Lines))
                && ThermalProperties.Of(SmallUnknowns.Of(component), Temperature.FromCelsius(25)) is not null)
            {
                known.Add(portion);
            }
            else if (component.Mass > Mass.Zero)
            {
                findings.Add(StepFindings.About(input.Step, "filling-heat-not-known", Grade.Hint, false, ("filling", component.Name)));
            }
        }

        return (known, findings);
    }

    private static Portion Together(Portion dough, List<Portion> fillings, Priors priors)
    {
        Portion[] all = [dough, .. fillings];
        var balance = new MixingBalance([.. all.Select(PartOf)], 0, FatMelting.Butter);
        var celsius = new double[priors.Lanes];
        for (var lane = 0; lane < celsius.Length; lane++)
        {
            celsius[lane] = balance.Mixed([.. all.Select(portion => portion.Celsius!.Value[lane])], new(0, 0, priors.Melting[lane]));
        }

        return dough with
        {
            Mass = Mass.FromGrams(all.Sum(portion => portion.Mass.Grams)),
            LaidIn = dough.LaidIn + Mass.FromGrams(fillings.Sum(filling => filling.Mass.Grams)),
            Composition = Composition.Mix([.. all.Select(portion => (portion.Mass.Grams, portion.Composition))]),
            JoulesPerKelvin = all.Sum(portion => portion.JoulesPerKelvin),
            MeltingFat = Mass.FromGrams(all.Sum(portion => portion.MeltingFat.Grams)),
            Celsius = new(celsius),
        };
    }

    private static MixPart PartOf(Portion portion, int index) => new(
        index.ToString(System.Globalization.CultureInfo.InvariantCulture),
        portion.Mass,
        SpecificHeat.FromJoulesPerGramKelvin(portion.JoulesPerKelvin / portion.Mass.Grams),
        portion.MeltingFat);

    /// <summary>It is laid in bit by bit while the shaping goes on.</summary>
    private static WayPoint[] Warmed(IReadOnlyList<WayPoint> way, double kelvins)
    {
        var length = way[^1].Minutes;
        return [.. way.Select(point => point with { Celsius = point.Celsius + (length > 0 ? kelvins * point.Minutes / length : kelvins) })];
    }
}

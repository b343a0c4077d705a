using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>A line with its new mass.</summary>
/// <param name="Swap">What stands in; null for a line that only gives or takes.</param>
internal sealed record LineEdit(string Line, Mass Mass, PlannedSwap? Swap);

/// <summary>Everything that changes in one part.</summary>
/// <param name="Water">Water that was not there before; zero when there is none.</param>
internal sealed record PartEdit(ComponentFormula Component, IReadOnlyList<LineEdit> Lines, Mass Water);

/// <summary>Finds the masses of one part: what stands in, and what gives or takes for it. Source: swap-balance.</summary>
internal static class PartSwap
{
    // A pull so weak that it only chooses among answers that are equally good.
    private const double Pull = 1e-8;

    // Of the part's flour: for less no hand notices, nobody wants another line.
    public const double WaterWorthALine = 0.005;

    public static PartEdit Solve(ComponentFormula component, IReadOnlyList<PlannedSwap> swaps, Formula formula)
    {
        var scale = formula.Recipe.Home.Scale;
        var solved = swaps.Where(swap => swap.Manner == Manner.Solved).ToArray();
        var correctors = Correctors.Of(component, swaps, formula.Larder.WithId("water"));
        var masses = Masses(swaps, solved, correctors);

        var edits = new List<LineEdit>();
        var standing = 0;
        foreach (var swap in swaps)
        {
            var mass = swap.Manner == Manner.Solved ? Mass.FromGrams(masses[standing++]) : swap.FixedMass;
            edits.Add(new(swap.Line.Source.Id, mass == swap.Line.Mass ? mass : ScaleStep.Round(mass, scale), swap));
        }

        var water = Mass.Zero;
        for (var i = 0; i < correctors.Count; i++)
        {
            var grams = masses[solved.Length + i];
            // Less than a step of the scale is no change.
            if (Math.Abs(grams - correctors[i].Before) < scale.Grams)
            {
                continue;
            }

            if (correctors[i].Line is { } line)
            {
                edits.Add(new(line.Source.Id, ScaleStep.Within(Mass.FromGrams(grams), correctors[i].Low, correctors[i].High, scale), null));
            }
            else if (grams >= WaterWorthALine * component.Flour.Grams)
            {
                water = ScaleStep.Round(Mass.FromGrams(grams), scale);
            }
        }

        return new(component, edits, water);
    }

    private static double[] Masses(IReadOnlyList<PlannedSwap> swaps, PlannedSwap[] solved, IReadOnlyList<Corrector> correctors)
    {
        var isStarchy = solved.Any(swap => swap is { Line.Role: Role.Starchy, By.Ingredient.Role: Role.Starchy });
        var target = Missing(swaps, isStarchy);
        var columns = new List<double[]>();
        var (low, high, start) = (new List<double>(), new List<double>(), new List<double>());
        foreach (var swap in solved)
        {
            columns.Add(Brings.Of(swap.By!.Composition, isStarchy));
            low.Add(swap.Times.Least * swap.Line.Mass.Grams);
            high.Add(swap.Times.Most * swap.Line.Mass.Grams);
            start.Add(swap.Line.Mass.Grams);
        }

        foreach (var corrector in correctors)
        {
            var brings = Brings.Of(corrector.Composition, false);
            columns.Add(brings);
            low.Add(corrector.Low);
            high.Add(corrector.High);
            start.Add(corrector.Before);
            target = [.. target.Zip(brings, (missing, share) => missing + (share * corrector.Before))];
        }

        return BoundedLeastSquares.Solve(columns, target, [.. low], [.. high], [.. start], Pull);
    }

    /// <summary>What goes with the lines that are swapped, less what stands in with a mass of its own brings.</summary>
    private static double[] Missing(IReadOnlyList<PlannedSwap> swaps, bool isStarchy)
    {
        var missing = new double[4];
        foreach (var swap in swaps.Where(swap => swap.Manner is Manner.Without or Manner.Yeast or Manner.AsMuch or Manner.Solved))
        {
            Add(missing, swap.Line.Composition, swap.Line.Mass, 1);
            if (swap.Manner != Manner.Solved && swap.By is { } by)
            {
                Add(missing, by.Composition, swap.FixedMass, -1);
            }
        }

        return missing;

        void Add(double[] into, Composition composition, Mass mass, int sign)
        {
            if (PlannedSwap.Known(composition))
            {
                var brings = Brings.Of(composition, isStarchy);
                for (var i = 0; i < into.Length; i++)
                {
                    into[i] += sign * mass.Grams * brings[i];
                }
            }
        }
    }
}

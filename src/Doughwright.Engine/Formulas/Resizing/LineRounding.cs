using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>
/// Rounds scaled lines to what a kitchen can weigh. The parts of the dough add up together to their rounded total, every other part by itself, by
/// largest remainder. Lines of few steps, yeast and salt as a rule, are rounded one by one, because a step more or less is much for them, and
/// the large lines carry the rest, save equal ones in ounces, which stay equal; those that this would change by more than a tenth keep the decimals they need, and are told.
/// </summary>
internal sealed class LineRounding(Mass scale)
{
    /// <summary>A step of fifty is a fiftieth.</summary>
    private const double FewSteps = 50;

    /// <summary>Where nothing is heavier, only what a step would change by a tenth is rounded by itself.</summary>
    private const double FewestSteps = 10;
    private const int SameDigits = 6;
    private const double WorstRounding = 0.10;
    private const double FineRounding = 0.05;

    private readonly OunceScale ounces = OunceScale.For(scale);
    private readonly bool showsOunces = OunceScale.IsOf(scale);

    public void Round(IReadOnlyList<ScaledLine> lines)
    {
        foreach (var line in lines.Where(line => line.Typed is null))
        {
            if (line.Exact <= Mass.Zero)
            {
                line.Write(Grams(line.Exact.Grams, line), LineForm.Scale);
            }
            else if (Measures.Typed(line) is { } measure)
            {
                line.Write(measure.Typed, LineForm.Household, measure.Household, measure.Mass);
            }
        }

        var weighed = lines.Where(line => line.Typed is null).ToList();
        foreach (var group in weighed.GroupBy(line => (line.Inside ? "" : line.Component.Id, IsInOunces(line))).ToList())
        {
            RoundTogether([.. group], group.Key.Item2);
        }
    }

    private void RoundTogether(IReadOnlyList<ScaledLine> lines, bool inOunces)
    {
        var step = inOunces ? ounces.Step : scale;
        var total = lines.Sum(line => line.Exact / step);
        var few = lines.Any(line => line.Exact / step >= FewSteps) ? FewSteps : FewestSteps;
        var large = new List<ScaledLine>();
        foreach (var line in lines)
        {
            var steps = line.Exact / step;
            if (steps >= few)
            {
                large.Add(line);
                continue;
            }

            var near = Math.Round(steps, MidpointRounding.AwayFromZero);
            var isFine = Math.Abs((near / steps) - 1) > WorstRounding;
            total -= isFine ? steps : near;
            if (isFine)
            {
                line.Write(Grams(Fine(line.Exact.Grams), line), LineForm.BelowScale);
            }
            else
            {
                Write(line, (long)near, inOunces);
            }
        }

        // Ounces are so coarse that two lines of 4 oz would part for everybody to see.
        var (equal, single) = (new List<ScaledLine>(), new List<ScaledLine>());
        foreach (var same in large.GroupBy(line => Math.Round(line.Exact / step, SameDigits)))
        {
            (inOunces && same.Count() > 1 ? equal : single).AddRange(same);
        }

        foreach (var line in equal)
        {
            var near = Math.Round(Math.Round(line.Exact / step, SameDigits), MidpointRounding.AwayFromZero);
            total -= near;
            Write(line, (long)near, inOunces);
        }

        var units = Apportionment.Units([.. single.Select(line => line.Exact / step)], Math.Max(0, (long)Math.Round(total, MidpointRounding.AwayFromZero)));
        for (var i = 0; i < single.Count; i++)
        {
            Write(single[i], units[i], inOunces);
        }
    }

    /// <summary>What is weighed for the first time is written as the scale shows it.</summary>
    private bool IsInOunces(ScaledLine line) => OunceScale.IsMeant(line.Source.Typed) || (showsOunces && line.Source.Household is not null);

    private void Write(ScaledLine line, long units, bool inOunces)
    {
        var isNew = line.Source.Household is not null;
        if (inOunces)
        {
            line.Write(ounces.Text(units), isNew ? LineForm.HouseholdToGrams : LineForm.Ounces);
        }
        else
        {
            // A step in ounces is no plain number of grams; what was typed in grams stays in grams, to a tenth.
            var grams = units * (decimal)scale.Grams;
            grams = showsOunces ? Math.Round(grams, 1, MidpointRounding.AwayFromZero) : grams;
            line.Write(Grams(NumberText.ToDouble(grams), line), isNew ? LineForm.HouseholdToGrams : LineForm.Scale);
        }
    }

    /// <summary>The fewest decimals that come within a twentieth.</summary>
    private static double Fine(double grams)
    {
        var decimals = 0;
        while (decimals < 6 && Math.Abs((Math.Round(grams, decimals, MidpointRounding.AwayFromZero) / grams) - 1) > FineRounding)
        {
            decimals++;
        }

        return decimals == 6 ? grams : Math.Round(grams, decimals, MidpointRounding.AwayFromZero);
    }

    /// <summary>Kilograms stay kilograms as long as it is one at least.</summary>
    private static string Grams(double grams, ScaledLine line) => line.Source.Typed.Contains("kg", StringComparison.Ordinal) && grams >= 1000
        ? NumberText.Exact(NumberText.ToDouble((decimal)grams / 1000)) + " kg"
        : NumberText.Exact(grams) + " g";
}

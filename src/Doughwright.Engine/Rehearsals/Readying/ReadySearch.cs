using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Readying;

/// <summary>What a search came to: where, or the times on both sides.</summary>
/// <param name="At">Null where no place takes the wanted time.</param>
/// <param name="IsJump">Whether the wanted time lies in a jump; else beyond an end.</param>
internal readonly record struct ReadyPlace(double? At, double Quick, double Slow, bool IsJump);

/// <summary>Runs one recipe with other doses and other water, and finds those that come out after a given time.</summary>
internal sealed class ReadySearch(HomeRun home, Larder larder, Request request, ComponentFormula dough, IReadOnlyList<LineFormula> warmed)
{
    /// <summary>An answer this near is the answer: nobody reads a dough to a tenth of a minute.</summary>
    private const double NearMinutes = 0.1;

    /// <summary>An end that misses by less shows the same minute on the clock: it does it.</summary>
    private const double SameMinute = 0.5;
    private const int MostSteps = 40;

    /// <summary>The likely lane alone: what is looked for is the likely answer.</summary>
    private readonly HomeRun likely = HomeRun.Of(home.Formula, 1);

    public IReadOnlyList<LineFormula> Yeasts { get; } = [.. dough.Lines.Where(line => line is { Role: Role.Yeast, UsesComponent: null, Ingredient.Yeast: not null } && line.Mass > Mass.Zero)];

    /// <param name="lnDose">Logarithm of the dose over the dose as written.</param>
    /// <param name="water">°C of the water; null as written.</param>
    public Rehearsal Run(double lnDose, double? water) => Run(home, lnDose, water);

    /// <summary>Minutes from the first hand to the end, likely; infinite where it never ends or cannot be told.</summary>
    public double Minutes(double lnDose, double? water) => Run(likely, lnDose, water).Total?.Likely.Minutes ?? double.PositiveInfinity;

    /// <summary>
    /// The place between two ends at which the time is the wanted one; times fall from the low to the high end. Where they jump past it, as heating
    /// that comes on at an hour makes them, there is none.
    /// </summary>
    public static ReadyPlace Find(Func<double, double> minutes, double low, double high, double wanted)
    {
        var (slow, quick) = (minutes(low), minutes(high));
        if (Math.Abs(quick - wanted) <= SameMinute)
        {
            return new(high, quick, quick, IsJump: false);
        }

        if (Math.Abs(slow - wanted) <= SameMinute)
        {
            return new(low, slow, slow, IsJump: false);
        }

        if (!(quick <= wanted) || slow < wanted)
        {
            return new(null, quick, slow, IsJump: false);
        }

        for (var step = 0; step < MostSteps; step++)
        {
            if (Math.Abs(quick - wanted) <= NearMinutes)
            {
                return new(high, quick, quick, IsJump: false);
            }

            if (Math.Abs(slow - wanted) <= NearMinutes)
            {
                return new(low, slow, slow, IsJump: false);
            }

            var middle = (low + high) / 2;
            var at = minutes(middle);
            if (at > wanted)
            {
                (low, slow) = (middle, at);
            }
            else
            {
                (high, quick) = (middle, at);
            }
        }

        return new(null, quick, slow, IsJump: true);
    }

    private Rehearsal Run(HomeRun tested, double lnDose, double? water)
    {
        var at = new Dictionary<string, Temperature>(request.At);
        foreach (var line in water is null ? [] : warmed)
        {
            at[line.UsesComponent ?? Request.LineOf(dough.Id, line.Id)] = Temperature.FromCelsius(water!.Value);
        }

        var asked = request with { At = at };
        return Rehearser.RehearseOther(tested, Dosed(home.Formula.Recipe, Elementary.Exp(lnDose)), larder, asked);
    }

    private Recipe Dosed(Recipe recipe, double factor) => factor == 1 ? recipe : recipe with
    {
        Components = [.. recipe.Components.Select(component => component.Id != dough.Id ? component : component with
        {
            Lines = [.. component.Lines.Select(line => Yeasts.FirstOrDefault(yeast => yeast.Id == line.Id) is { } yeast
                ? line with { Mass = yeast.Mass * factor, Household = null }
                : line)],
        })],
    };
}

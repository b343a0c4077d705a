using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Differences;

namespace Doughwright.Engine.Sides;

/// <summary>What one difference of two recipes does to a figure when it is made alone.</summary>
/// <param name="Difference">Null for what is left of the whole: what the differences do to each other, and those that cannot be made alone.</param>
/// <param name="By">In the unit of the figure; never zero.</param>
public sealed record Cause(RecipeDifference? Difference, double By);

/// <summary>
/// Why the figures of two recipes differ: each difference is put into the first recipe by itself, and that is rehearsed. What all of them by themselves do not come to
/// is said to be together, never shared out. Where everything is made in another size, that comes first, and each of the others is put into the resized recipe, because a
/// line of a larger dough would be too much in a smaller one.
/// </summary>
public sealed class Causes
{
    /// <summary>What is smaller than this is rounding of the arithmetic.</summary>
    private const double Nothing = 1e-6;

    private readonly Dictionary<Figure, IReadOnlyList<Cause>> run;
    private readonly Dictionary<FormulaFigure, IReadOnlyList<Cause>> formulas;

    private Causes(Dictionary<Figure, IReadOnlyList<Cause>> run, Dictionary<FormulaFigure, IReadOnlyList<Cause>> formulas) => (this.run, this.formulas) = (run, formulas);

    /// <summary>Whether a difference can move a figure: words, names and tools cannot.</summary>
    public static bool CanMove(Aspect aspect) => aspect is not (
        Aspect.Title or Aspect.PieceName or Aspect.HomeName or Aspect.PartName or Aspect.PartBase or Aspect.PartOrder or Aspect.LineName or Aspect.LineOrder or Aspect.Typed
        or Aspect.StepName or Aspect.Cue or Aspect.StepTools or Aspect.StepWords or Aspect.Learn or Aspect.Photo or Aspect.Tool or Aspect.Words or Aspect.Without or Aspect.Swap
        or Aspect.Keeping or Aspect.Accepted or Aspect.Variants);

    /// <summary>So many recipes are rehearsed for it.</summary>
    public static int Rehearsals(IEnumerable<RecipeDifference> differences) => differences.Count(difference => CanMove(difference.Aspect));

    /// <summary>What moved a figure of the run, the largest first; nothing where it is the same or not known on both sides.</summary>
    public IReadOnlyList<Cause> Of(Figure figure) => run.GetValueOrDefault(figure, []);

    /// <summary>What moved a figure of the formula.</summary>
    public IReadOnlyList<Cause> Of(FormulaFigure figure) => formulas.GetValueOrDefault(figure, []);

    /// <summary>Puts each difference into the first recipe alone.</summary>
    /// <param name="come">Of the two, in the same kitchen.</param>
    /// <param name="differences">All between the two.</param>
    /// <param name="tried">Told after each, how many of <see cref="Rehearsals"/> are done.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Causes Of(
        Consequences come, IReadOnlyList<RecipeDifference> differences, Larder larder, Kitchen kitchen, Action<int>? tried = null, CancellationToken stop = default)
    {
        var trial = new Trial(come, larder, new() { Kitchen = kitchen });
        var (first, second) = (come.First.Recipe, come.Second.Recipe);
        var (at, began) = (first, trial.Of(first, ownMeasurements: false));
        var alone = new List<(RecipeDifference Difference, Told Before, Told After)>();
        var done = 0;
        if (differences.FirstOrDefault(difference => difference.Aspect == Aspect.Scale) is { } scale && Factor(come) is { } factor)
        {
            at = Scaled(first, factor);
            var scaled = trial.Of(at, ownMeasurements: false);
            alone.Add((scale, began, scaled));
            began = scaled;
            tried?.Invoke(++done);
        }

        foreach (var difference in differences.Where(difference => CanMove(difference.Aspect) && difference.Aspect != Aspect.Scale))
        {
            stop.ThrowIfCancellationRequested();
            if (RecipeDifferences.Take(second, at, difference.Turned) is { } changed)
            {
                alone.Add((difference, began, trial.Of(changed, IsOfMeasuring(difference.Aspect))));
            }

            tried?.Invoke(++done);
        }

        return new(
            come.Run.ToDictionary(known => known.Figure, known => Shares(known.By, alone, told => told.Run.GetValueOrDefault(known.Figure).Value)),
            come.Formulas.ToDictionary(known => known.Figure, known => Shares(known.By, alone, told => told.Formulas.GetValueOrDefault(known.Figure))));
    }

    private static IReadOnlyList<Cause> Shares(double? by, IEnumerable<(RecipeDifference Difference, Told Before, Told After)> alone, Func<Told, double?> figure)
    {
        if (by is not { } whole || Math.Abs(whole) < Nothing)
        {
            return [];
        }

        var shares = alone.Select(one => new Cause(one.Difference, (figure(one.After) - figure(one.Before)) ?? 0)).Where(cause => Math.Abs(cause.By) >= Nothing)
            .OrderByDescending(cause => Math.Abs(cause.By)).ToList();
        var rest = whole - shares.Sum(cause => cause.By);
        return Math.Abs(rest) < Nothing ? shares : [.. shares, new(null, rest)];
    }

    /// <summary>How a recipe was measured, and where, is a difference of its own; all others go by the measurements that the comparison goes by.</summary>
    private static bool IsOfMeasuring(Aspect aspect) => aspect == Aspect.Measured || aspect.ToString().StartsWith("Home", StringComparison.Ordinal);

    private static double? Factor(Consequences come) => come.First.Formula.Flour.Grams is > 0 and var flour && come.Second.Formula.Flour.Grams is > 0 and var other ? other / flour : null;

    private static Recipe Scaled(Recipe recipe, double factor) => recipe with
    {
        Components =
        [
            .. recipe.Components.Select(part => part with
            {
                Lines = [.. part.Lines.Select(line => line.Mass is { } mass ? line with { Mass = Mass.FromGrams(mass.Grams * factor), Household = null } : line)],
            }),
        ],
    };

    /// <summary>Every figure of one recipe.</summary>
    private sealed record Told(Dictionary<Figure, Figures.Told> Run, Dictionary<FormulaFigure, double?> Formulas);

    /// <summary>Rehearses recipes in the kitchen of the comparison, in the likely lane, by the measurements that it goes by.</summary>
    private sealed class Trial(Consequences come, Larder larder, Request asked)
    {
        private readonly HomeRun measured = HomeRun.Of(come.By == Tested.Second ? come.Second.Formula : come.First.Formula, lanes: 1);

        /// <param name="ownMeasurements">Whether it goes by its own.</param>
        public Told Of(Recipe recipe, bool ownMeasurements)
        {
            var formula = Formula.Balance(recipe, larder);
            var rehearsal = ownMeasurements ? Rehearser.Rehearse(HomeRun.Of(formula, lanes: 1), larder, asked) : Rehearser.RehearseOther(measured, recipe, larder, asked);
            return new(Figures.Of(rehearsal), Enum.GetValues<FormulaFigure>().ToDictionary(figure => figure, figure => FormulaDifference.Of(formula, figure)));
        }
    }
}

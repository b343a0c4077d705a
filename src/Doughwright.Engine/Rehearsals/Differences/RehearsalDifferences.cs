using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Rehearsals.Sections;

namespace Doughwright.Engine.Rehearsals.Differences;

/// <summary>
/// How two rehearsals of a recipe differ, figure by figure, and what moved each: one property after the other is changed and the recipe
/// rehearsed anew, so the parts of a difference add up to it. The likely answers only; what the range does is not shared out.
/// </summary>
/// <param name="All">In the order of the first rehearsal; what only the second has comes after the rest.</param>
public sealed record RehearsalDifferences(IReadOnlyList<Difference> All)
{
    private readonly Dictionary<Figure, Difference> byFigure = All.ToDictionary(difference => difference.Figure);

    /// <summary>The difference of this figure; null when neither rehearsal has it.</summary>
    public Difference? Find(FigureKind kind, string of = "") => byFigure.GetValueOrDefault(new(kind, of));

    /// <summary>What moved every figure from the first of two rehearsals of a recipe to the second.</summary>
    public static RehearsalDifferences Between(Formula formula, Larder larder, Request first, Request second) =>
        Between(HomeRun.Of(formula, lanes: 1), larder, first, second, request => request);

    /// <summary>The same with bakes over the sections through their pieces, on every way between the two. Takes some tenths of a second for each.</summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static RehearsalDifferences BetweenOverSections(HomeBakes home, Larder larder, Request first, Request second, CancellationToken stop = default) =>
        Between(home.Run, larder, first, second, request => Rehearser.OverSections(home, larder, request, stop).Request);

    private static RehearsalDifferences Between(HomeRun home, Larder larder, Request first, Request second, Func<Request, Request> told)
    {
        var own = home.Formula.Recipe.Home;
        var changes = Change.Between(first with { Kitchen = Nameless(first.Kitchen ?? own) }, second with { Kitchen = Nameless(second.Kitchen ?? own) });
        var runs = changes.Select(change => change.After).Prepend(first)
            .Select(request => Figures.Of(Rehearser.Rehearse(home, larder, told(request))))
            .ToList();
        var figures = runs[0].Keys.Concat(runs[^1].Keys).Distinct();
        return new([.. figures.Select(figure => Of(figure, [.. runs.Select(run => Told(run, figure))], changes))]);
    }

    /// <summary>What a kitchen is called moves nothing.</summary>
    private static Kitchen Nameless(Kitchen kitchen) => kitchen with { Name = "" };

    private static Figures.Told Told(Dictionary<Figure, Figures.Told> run, Figure figure) =>
        run.TryGetValue(figure, out var told) ? told : new(null, Unknown.NotThere);

    private static Difference Of(Figure figure, Figures.Told[] told, IReadOnlyList<Change> changes) => new()
    {
        Figure = figure,
        First = told[0].Value,
        FirstUnknown = told[0].Why,
        Second = told[^1].Value,
        SecondUnknown = told[^1].Why,
        Parts = told[0].Value is null || told[^1].Value is null ? [] : Parts([.. told.Select(one => one.Value)], changes),
    };

    /// <summary>From each known value to the next known one; what was changed between them goes together.</summary>
    private static List<Difference.Part> Parts(double?[] values, IReadOnlyList<Change> changes)
    {
        var parts = new List<Difference.Part>();
        var moves = new List<Move>();
        var last = values[0]!.Value;
        for (var index = 1; index < values.Length; index++)
        {
            moves.Add(changes[index - 1].Move);
            if (values[index] is not { } value)
            {
                continue;
            }

            if (value != last)
            {
                parts.Add(new([.. moves], value - last));
            }

            moves.Clear();
            last = value;
        }

        return parts;
    }
}

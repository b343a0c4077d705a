using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Differences;

namespace Doughwright.Engine.Sides;

/// <summary>What the differences of two recipes come to in one kitchen: both rehearsed there, figure by figure. The bakes go along one radius.</summary>
/// <param name="Formulas">Weights and shares.</param>
/// <param name="Run">Temperatures and times, in the order of the first; what only the second has comes after the rest. The likely answers.</param>
/// <param name="By">Whose measurements both went by.</param>
public sealed record Consequences(
    Rehearsal First,
    Rehearsal Second,
    IReadOnlyList<FormulaDifference> Formulas,
    IReadOnlyList<Difference> Run,
    Tested By)
{
    /// <summary>The difference of this figure; null when neither rehearsal has it.</summary>
    public Difference? Find(FigureKind kind, string of = "") => Run.FirstOrDefault(difference => difference.Figure == new Figure(kind, of));

    /// <summary>Rehearses two recipes in one kitchen.</summary>
    /// <param name="kitchen">Of both, whatever their homes are.</param>
    /// <param name="by">Whose measurements count.</param>
    public static Consequences Between(Formula first, Formula second, Larder larder, Kitchen kitchen, Tested by)
    {
        var asked = new Request { Kitchen = kitchen };
        var one = by == Tested.Second ? Rehearser.RehearseSwapped(second.Recipe, first.Recipe, larder, asked) : Rehearser.Rehearse(first, larder, asked);
        var other = by == Tested.First ? Rehearser.RehearseSwapped(first.Recipe, second.Recipe, larder, asked) : Rehearser.Rehearse(second, larder, asked);
        var (told, otherwise) = (Figures.Of(one), Figures.Of(other));
        return new(one, other, FormulaDifference.Between(first, second), [.. told.Keys.Concat(otherwise.Keys).Distinct().Select(figure => Of(figure, told, otherwise))], by);
    }

    private static Difference Of(Figure figure, Dictionary<Figure, Figures.Told> first, Dictionary<Figure, Figures.Told> second)
    {
        var (one, other) = (Told(first, figure), Told(second, figure));
        return new() { Figure = figure, First = one.Value, FirstUnknown = one.Why, Second = other.Value, SecondUnknown = other.Why };
    }

    private static Figures.Told Told(Dictionary<Figure, Figures.Told> told, Figure figure) =>
        told.TryGetValue(figure, out var known) ? known : new(null, Unknown.NotThere);
}

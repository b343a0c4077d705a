using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>What a wish comes to: the factor, and the pieces there can be. Or the reason why it cannot be done.</summary>
internal sealed record SizeAsked(double Factor, IReadOnlyList<Make> Makes, Finding? Refused)
{
    public static SizeAsked Of(Formula formula, ResizeWish wish)
    {
        var make = formula.Recipe.Make;
        return wish switch
        {
            ResizeWish.Pieces(var count) => make is null ? NoMake() : new((double)count / make.Pieces, [make.With(count)], null),
            ResizeWish.PieceMass(var each) => make is not { PieceMass.Grams: > 0 } ? NoMake() : new(each / make.PieceMass, [make with { PieceMass = each }], null),
            ResizeWish.Dough(var mass) => formula.Dough <= Mass.Zero
                ? Refuse(Report.Make("resize-no-dough", Grade.Error, "parts", Position.None))
                : Scaled(make, mass / formula.Dough),
            ResizeWish.HavePart(var id, var mass) => Having(formula, formula.FindComponent(id)?.Mass, formula.FindComponent(id)?.Name ?? id, mass),
            ResizeWish.HaveLine(var id, var mass) => Having(formula, MassOfLine(formula, id), NameOfLine(formula, id), mass),
            ResizeWish.Tin(var size, var own) => OtherVessel.Tin(formula.Recipe, size, own),
            ResizeWish.Tray(var size, var own) => OtherVessel.Tray(formula.Recipe, size, own),
            ResizeWish.Trays(var count) => OtherVessel.Trays(formula.Recipe, count),
            _ => throw new ArgumentOutOfRangeException(nameof(wish), wish, "Not a wish."),
        };
    }

    public static SizeAsked Refuse(Finding finding) => new(1, [], finding);

    public static SizeAsked NoMake() => Refuse(Report.Make("resize-without-make", Grade.Error, "make", Position.None));

    /// <summary>
    /// By a factor that does not ask for pieces: as many of the old weight as come nearest, and of what weight they then are. The neighbour on the
    /// other side is the other choice.
    /// </summary>
    public static SizeAsked Scaled(Make? make, double factor)
    {
        if (make is null)
        {
            return new(factor, [], null);
        }

        var pieces = make.Pieces * factor;
        var nearest = Whole(Math.Round(pieces, MidpointRounding.AwayFromZero));
        var other = Whole(pieces < nearest ? nearest - 1 : nearest + 1);
        int[] counts = Math.Abs(pieces - nearest) < 1e-6 || other == nearest ? [nearest] : [nearest, other];
        return new(factor, [.. counts.Select(count => make.With(count) with { PieceMass = make.PieceMass * (pieces / count) })], null);
    }

    private static int Whole(double pieces) => (int)Math.Clamp(pieces, 1, int.MaxValue);

    private static SizeAsked Having(Formula formula, Mass? there, string name, Mass have) => there is { Grams: > 0 } written
        ? Scaled(formula.Recipe.Make, have / written)
        : Refuse(Report.Make("resize-nothing-to-scale", Grade.Error, "parts", Position.None, ("name", name)));

    private static Mass MassOfLine(Formula formula, string id) =>
        LinesOf(formula, id).Aggregate(Mass.Zero, (sum, line) => sum + line.Mass);

    private static string NameOfLine(Formula formula, string id) => LinesOf(formula, id).FirstOrDefault()?.Name ?? id;

    private static IEnumerable<LineFormula> LinesOf(Formula formula, string id) =>
        formula.Components.SelectMany(component => component.Lines).Where(line => line.Id == id && line.Source.Uses is null);
}

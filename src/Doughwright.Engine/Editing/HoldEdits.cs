using Doughwright.Engine.Formulas;
using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Editing;

/// <summary>
/// Changes of the sentence that the lines follow: one line is held at its weight and the rest of the dough gives way, or all keep their proportions. What was measured
/// stays: whether it still holds in another size is another question.
/// </summary>
public static class HoldEdits
{
    /// <summary>Only the sentence changes.</summary>
    public const string Nothing = "";

    /// <summary>Every line grows or shrinks alike.</summary>
    public const string Proportions = "*";

    private const double WholeFrom = 10;
    private const double Fine = 0.1;
    private const int OunceDigits = 2;

    /// <summary>What is less of the dough than this is rounding, and no dough that could give way.</summary>
    private const double Negligible = 1e-6;

    private static readonly Mass Ounce = QuantityText.TryMass("1 oz").Value!.Value;

    /// <summary>Lines that can be held: weighed, of the dough, and no parts.</summary>
    public static IReadOnlyList<(string Held, Line Line)> Choices(Recipe recipe) =>
    [
        .. recipe.Components.Where(part => part.BelongsToDough)
            .SelectMany(part => part.Lines.Where(line => line is { Uses: null, Mass.Grams: > 0 }).Select(line => ($"{part.Id}/{line.Id}", line))),
    ];

    /// <summary>A change of the sentence, with the lines brought to what it then comes to.</summary>
    /// <param name="held"><see cref="Nothing"/>, <see cref="Proportions"/>, or one of the choices.</param>
    /// <param name="sentence">Another number of pieces, or another weight of each.</param>
    public static EditAnswer Make(Recipe recipe, string held, Func<Recipe, EditAnswer> sentence)
    {
        if (sentence(recipe) is not EditAnswer.Done { Recipe.Make: { } now } done || held == Nothing || recipe.Make is not { } was)
        {
            return sentence(recipe);
        }

        var factor = now.Pieces * now.PieceMass.Grams / (was.Pieces * was.PieceMass.Grams);
        return Scaled(done.Recipe, held, factor, null) is var (scaled, refused) && scaled is not null
            ? new EditAnswer.Done(scaled, Deed.Of("make-held", ("to", done.Deed.Arguments["to"]), ("held", NameOf(recipe, held))))
            : refused!;
    }

    /// <summary>Another weight of the line that is held; the rest of the dough gives way, so that the dough stays as heavy as it is.</summary>
    /// <param name="unit">What a bare number is in; empty where that must be said.</param>
    public static EditAnswer HeldAt(Recipe recipe, string held, string typed, string unit = "g")
    {
        if (Find(recipe, held) is not { } line)
        {
            return EditAnswer.Refuse("edit-held-gone", RecipeText.Make);
        }

        var (read, reasons) = TypedLine.Read(line.Name, TypedLine.WithUnit(typed, unit), RecipeText.Make, recipe.LarderOver(Larder.Shipped));
        return read is null ? new EditAnswer.Refused(reasons)
            : read.Mass is not { Grams: > 0 } ? EditAnswer.Refuse("edit-held-weight", RecipeText.Make, ("typed", typed.Trim()), ("line", line.Name))
            : Scaled(recipe, held, 1, read) is var (scaled, refused) && scaled is not null
                ? new EditAnswer.Done(scaled, Deed.Of("held-at", ("line", line.Name), ("from", LineEdits.Spoken(line)), ("to", LineEdits.Spoken(read))))
                : refused!;
    }

    private static Line? Find(Recipe recipe, string held) => Choices(recipe).FirstOrDefault(one => one.Held == held).Line;

    private static string NameOf(Recipe recipe, string held) => Find(recipe, held)?.Name ?? Proportions;

    /// <summary>All but the held line by one factor, so that the dough comes out as heavy as the sentence asks; what stays outside the dough goes with the sentence.</summary>
    private static (Recipe? Recipe, EditAnswer? Refused) Scaled(Recipe recipe, string held, double factor, Line? heldNow)
    {
        var line = held == Proportions ? null : Find(recipe, held);
        if (line is null && held != Proportions)
        {
            return (null, EditAnswer.Refuse("edit-held-gone", RecipeText.Make));
        }

        if (line is null)
        {
            return (With(factor, Written), null);
        }

        // Percentages of what is held stay where they are, so the dough gives way in a straight line that need not pass through nothing.
        var asked = DoughOf(recipe) * factor;
        var (once, twice) = (DoughOf(With(1, Exact)), DoughOf(With(2, Exact)));
        var slope = twice - once;
        if (slope <= asked * Negligible)
        {
            return (null, EditAnswer.Refuse("edit-held-all", RecipeText.Make, ("line", line.Name)));
        }

        var rest = 1 + ((asked - once) / slope);
        return rest > 0 && double.IsFinite(rest)
            ? (With(rest, Written), null)
            : (null, EditAnswer.Refuse("edit-held-too-much", RecipeText.Make, ("line", line.Name), ("dough", Mass.FromGrams(asked))));

        Recipe With(double rest, Func<Line, double, Mass, Line> scaled) => recipe with
        {
            Components =
            [
                .. recipe.Components.Select(part => TypedShares.Settled(
                    part with
                    {
                        Lines = [.. part.Lines.Select(one => ReferenceEquals(one, line) ? Held(one, heldNow) : scaled(one, part.BelongsToDough ? rest : factor, recipe.Home.Scale))],
                    },
                    recipe.LarderOver(Larder.Shipped))),
            ],
        };
    }

    private static double DoughOf(Recipe recipe) => Formula.Balance(recipe, Larder.Shipped).Dough.Grams;

    /// <summary>What is held is weighed: a percentage of a flour that changes would not hold it.</summary>
    private static Line Held(Line line, Line? now) => now is not null ? line with { Mass = now.Mass, Share = null, Household = now.Household, Typed = now.Typed }
        : line.Share is null ? line : line with { Share = null, Typed = ExactText.Of(line.Mass!.Value) };

    private static Line Exact(Line line, double factor, Mass scale) => line is { Share: null, Mass: { } mass } ? line with { Mass = mass * factor } : line;

    /// <summary>A percentage stays typed, and its weight follows. Nobody measures 2.3 tablespoons, so a measure becomes a weight.</summary>
    private static Line Written(Line line, double factor, Mass scale)
    {
        if (line.Share is not null || line.Mass is null || factor == 1)
        {
            return line;
        }

        var exact = Exact(line, factor, scale).Mass!.Value;
        var typed = line.Household is null && OunceScale.IsMeant(line.Typed)
            ? NumberText.Exact(Math.Round(exact / Ounce, OunceDigits, MidpointRounding.AwayFromZero)) + " oz"
            : NumberText.Exact(Rounded(exact.Grams, scale.Grams)) + " g";
        return line with { Typed = typed, Household = null, Mass = QuantityText.TryMass(typed).Value };
    }

    /// <summary>Whole steps of the scale from ten grams on, tenths below; what would be nothing keeps the digits it needs.</summary>
    private static double Rounded(double grams, double scale)
    {
        var step = grams >= WholeFrom ? Math.Max(Fine, scale) : Fine;
        var near = Math.Round(Math.Round(grams / step, MidpointRounding.AwayFromZero) * step, 3);
        return near > 0 && Math.Abs((near / grams) - 1) < 0.1 ? near : Math.Round(grams, 3);
    }
}

using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Editing;

/// <summary>Changes of what a recipe is called and what it makes.</summary>
public static class RecipeEdits
{
    private const string MakePlace = RecipeText.Make;

    /// <summary>Another title.</summary>
    public static EditAnswer Title(Recipe recipe, string typed) => TypedLine.Tidy(typed) is not { Length: > 0 } title
        ? EditAnswer.Refuse("edit-name-missing", RecipeText.Title, ("was", recipe.Title))
        : new EditAnswer.Done(recipe with { Title = title }, Deed.Of("title", ("from", recipe.Title), ("to", title)));

    /// <summary>What it makes, in words: "10 rolls of 80 g".</summary>
    public static EditAnswer Make(Recipe recipe, string typed)
    {
        var words = TypedLine.Tidy(typed);
        var (_, log) = SourceText.Of(words);
        var make = MakeGrammar.Read(new(words, Position.None, MakePlace, log));
        var reasons = log.Findings.Where(finding => finding.Grade == Grade.Error).ToArray();
        return make is null || reasons.Length > 0
            ? new EditAnswer.Refused(reasons)
            : new EditAnswer.Done(recipe with { Make = make }, Deed.Of("make", ("from", recipe.Make is { } was ? Spoken(was) : ""), ("to", Spoken(make))));
    }

    /// <summary>Another number of pieces. The word for them follows: one loaf, two loaves.</summary>
    public static EditAnswer Pieces(Recipe recipe, string typed)
    {
        if (recipe.Make is not { } make)
        {
            return EditAnswer.Refuse("edit-make-missing", MakePlace);
        }

        var what = QuantityText.TryCount(typed).Value is { } count && Limits.Pieces.Holds(count) ? make.With(count).What : make.What;
        return Make(recipe, $"{typed.Trim()} {what}{MakeGrammar.Of}{ExactText.Of(make.PieceMass)}");
    }

    /// <summary>Another word for the pieces: "buns in a tin".</summary>
    public static EditAnswer What(Recipe recipe, string typed) => recipe.Make is { } make
        ? Make(recipe, FormattableString.Invariant($"{make.Pieces} {typed.Trim()}{MakeGrammar.Of}{ExactText.Of(make.PieceMass)}"))
        : EditAnswer.Refuse("edit-make-missing", MakePlace);

    /// <summary>Other dough for each, in grams unless a unit is typed.</summary>
    /// <param name="unit">What a bare number is in; empty where that must be said.</param>
    public static EditAnswer Piece(Recipe recipe, string typed, string unit = "g") => recipe.Make is { } make
        ? Make(recipe, FormattableString.Invariant($"{make.Pieces} {make.What}{MakeGrammar.Of}{TypedLine.WithUnit(typed, unit)}"))
        : EditAnswer.Refuse("edit-make-missing", MakePlace);

    private static string Spoken(Make make) => FormattableString.Invariant($"{make.Pieces} {make.What}{MakeGrammar.Of}{ExactText.Of(make.PieceMass)}");
}

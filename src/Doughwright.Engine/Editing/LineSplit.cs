using System.Globalization;
using System.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Editing;

/// <summary>
/// Parts a line as it is typed or printed into its name and the words of its amount: "butter 50 g, soft", "2 1/2 oz of cream", "butter: 50 g",
/// "1 egg (50 g)". A part's name alone is all of it.
/// </summary>
internal static class LineSplit
{
    private const string Comma = ", ";
    private const string OfSomething = "of ";
    private const string Piece = "piece";

    /// <summary>How far two weights of one line may lie apart that are one weight in two units.</summary>
    private const double SameWeight = 0.05;

    /// <summary>Null when there is no name or no amount, or when it could be more than one of them.</summary>
    public static (string Name, string Words)? Of(string typed, Recipe recipe)
    {
        var (first, rest) = Halves(typed);
        if (first.IndexOf(": ", StringComparison.Ordinal) is var colon and > 0)
        {
            return (first[..colon].Trim(), first[(colon + 2)..].Trim() + rest);
        }

        if (recipe.FindComponent(Slug.Of(first)) is not null)
        {
            return (first, LineGrammar.AllOfIt + rest);
        }

        var read = BracketOf(first) is var (outside, mass, words)
            ? Bracketed(outside, mass, words, recipe)
            : Behind(first) ?? InFront(first, recipe) ?? Counted(first, recipe);
        return read is var (name, amount) ? (name, amount + rest) : null;
    }

    /// <summary>What stands before the first comma, its weights as a text has them, and the rest with the comma.</summary>
    public static (string First, string Behind) Halves(string typed)
    {
        var words = TypedLine.Tidy(typed);
        var comma = words.IndexOf(Comma, StringComparison.Ordinal);
        var (first, rest) = comma < 0 ? (words, "") : (words[..comma], words[comma..]);
        return (PrintedAmounts.Of(first, QuantityKind.Mass, QuantityKind.Percent), rest);
    }

    /// <summary>"1 egg (50 g)", "1 cup (240 g) milk", "8 oz (227 g) butter": what stands outside, the weight inside, and what is called by it.</summary>
    public static (string Outside, Mass Inside, string Words)? BracketOf(string first)
    {
        var (open, close) = (first.IndexOf('('), first.IndexOf(')'));
        return open > 0 && close > open && first[(open + 1)..close].Trim() is var words && QuantityText.TryMass(words).Value is { } mass
            ? (TypedLine.Tidy(first[..open] + first[(close + 1)..]), mass, words)
            : null;
    }

    /// <summary>A number before the name of a thing: "2 eggs".</summary>
    public static (double Number, string Name)? CountOf(string first) =>
        MixedNumber.Lead(first) is var (number, length) && length < first.Length && first[length] == ' '
            && WithoutOf(first[(length + 1)..].Trim()) is var name && IsName(name) && !name.Any(char.IsNumber) && !TypedLine.IsAmount(first)
            ? (number, name)
            : null;

    /// <summary>What is counted, where the larder has it, in the plural or not.</summary>
    public static Ingredient? Meant(string name, Larder larder) =>
        larder.Find(name, []).Ingredient ?? larder.Find(OneOrMany.Fitted(name, 2, 1), []).Ingredient;

    /// <summary>Whether words are more than a number.</summary>
    public static bool IsName(string words) => words.EnumerateRunes().Any(rune =>
        !Rune.IsDigit(rune) && !Rune.IsPunctuation(rune) && !Rune.IsWhiteSpace(rune) && Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.OtherNumber or UnicodeCategory.MathSymbol));

    /// <summary>The weight or measure that words begin with; null where they begin otherwise. A share may belong to a name: "2 % milk".</summary>
    public static string? AmountBefore(string words)
    {
        var parts = words.Split(' ');
        return Enumerable.Range(1, parts.Length).Select(length => string.Join(' ', parts[..length]))
            .LastOrDefault(first => QuantityText.TryMass(first).Ok || MeasureGrammar.Read(first) is not null);
    }

    /// <summary>"50 g" behind "butter". An amount is no name: "1" is none of "1/2 cups milk", nor "1 cup" of "2 tbsp milk".</summary>
    private static (string, string)? Behind(string first)
    {
        var parts = first.Split(' ');
        for (var i = 1; i < parts.Length; i++)
        {
            var (left, right) = (string.Join(' ', parts[..i]), string.Join(' ', parts[i..]));
            if (IsName(left) && AmountBefore(left) is null && !TypedRange.Between.Contains(parts[i - 1]) && TypedLine.IsAmount(right))
            {
                return (left, right);
            }
        }

        return null;
    }

    /// <summary>
    /// "50 g" before "butter". A weight goes before any measure: of "160 g whole milk" no whole one is taken. Of measures that one is meant of which the
    /// larder has the thing: "2 cups" of "whole milk"; else the longest, as with weights: "1 lb 4 oz flour" is not a pound of something.
    /// </summary>
    private static (string Name, string Amount)? InFront(string first, Recipe recipe)
    {
        var parts = first.Split(' ');
        var cuts = Enumerable.Range(1, parts.Length - 1).Reverse()
            .Select(i => (Amount: string.Join(' ', parts[..i]), Name: WithoutOf(string.Join(' ', parts[i..]))))
            .Where(cut => IsName(cut.Name) && AmountBefore(cut.Name) is null && Behind(cut.Name) is null && !cut.Amount.EndsWith(" of", StringComparison.Ordinal))
            .ToList();
        if (cuts.FirstOrDefault(cut => TypedLine.IsWeighed(cut.Amount)) is { Name: not null } weighed)
        {
            return (weighed.Name, weighed.Amount);
        }

        var measured = cuts.Where(cut => MeasureGrammar.Read(cut.Amount) is not null).ToList();
        if (measured.Count == 0)
        {
            return null;
        }

        var larder = recipe.LarderOver(Larder.Shipped);
        return measured.Count == 1 ? (measured[0].Name, measured[0].Amount) : measured.Select(cut => (cut.Name, cut.Amount)).MinBy(cut => Doubt(cut.Name, cut.Amount, larder));
    }

    /// <summary>0 where the larder knows what such a measure weighs, 1 where it knows several.</summary>
    private static int Doubt(string name, string amount, Larder larder) =>
        larder.Find(name, []).Ingredient is not { } ingredient ? 3
        : larder.MeasureOf(ingredient, MeasureGrammar.Read(amount)!.Unit).Kind switch
        {
            MeasureMatchKind.Exact => 0,
            MeasureMatchKind.NotClear => 1,
            _ => 2,
        };

    /// <summary>What is counted weighs what one of it weighs; not where it comes in sizes, of which none is taken unasked.</summary>
    private static (string, string)? Counted(string first, Recipe recipe)
    {
        var larder = recipe.LarderOver(Larder.Shipped);
        return CountOf(first) is var (_, name) && Meant(name, larder) is { } ingredient && larder.MeasureOf(ingredient, Piece).Kind == MeasureMatchKind.Exact
            && LineSizes.Of(larder, ingredient, recipe.Region).Count == 0
            ? (name, $"{first[..^name.Length].Replace(OfSomething, "", StringComparison.Ordinal).Trim()} {Piece}")
            : null;
    }

    /// <summary>A weight in brackets says what a measure or a single thing weighs. Of several things it may be that of each.</summary>
    private static (string, string)? Bracketed(string outside, Mass inside, string words, Recipe recipe) =>
        (Behind(outside) ?? InFront(outside, recipe)) is var (name, amount)
            ? QuantityText.TryMass(amount).Value is not { } mass ? (MeasureGrammar.Read(amount) is null ? null : (name, words))
                : Math.Abs((inside / mass) - 1) <= SameWeight ? (name, amount) : null
            : CountOf(outside) is var (number, counted) ? (number == 1 ? (counted, words) : null)
            : outside.Any(char.IsNumber) ? null
            : (outside, words);

    private static string WithoutOf(string name) => name.StartsWith(OfSomething, StringComparison.Ordinal) ? name[OfSomething.Length..] : name;
}

using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Editing;

/// <summary>Why a typed line is no name with an amount, as exactly as can be said: what is wrong with it, and how it is written.</summary>
internal static class LineRefusals
{
    public static EditAnswer Of(string typed, Recipe recipe, string place)
    {
        var (first, _) = LineSplit.Halves(typed);
        var words = TypedLine.Tidy(typed);
        return Broken(first, place)
            ?? Range(first, place)
            ?? Bracket(first, words, place)
            ?? TwoAmounts(first, words, place)
            ?? Count(first, words, recipe, place)
            ?? UnitOf(first, place)
            ?? Inside(first, words, place)
            ?? EditAnswer.Refuse("edit-line-not-understood", place, ("typed", words));
    }

    /// <summary>A weight below nothing, a decimal comma, a fraction without a short decimal: told as everywhere.</summary>
    private static EditAnswer? Broken(string first, string place)
    {
        foreach (var words in Pieces(first))
        {
            if (QuantityText.TryMass(words) is { Fault: QuantityFault.Negative })
            {
                return EditAnswer.Refuse("edit-negative", place, ("typed", words));
            }
        }

        foreach (var word in first.Split(' '))
        {
            if (QuantityText.TryNumber(word) is { Fault: QuantityFault.DecimalComma or QuantityFault.LeadingZero } number)
            {
                return Told(number.Fault!.Value, number.Typed, number.Piece, number.Offer, place);
            }
        }

        return Pieces(first).Select(words => QuantityText.TryMass(words)).FirstOrDefault(read => read.Fault == QuantityFault.Fraction && MassBehind(read.Typed)) is { Fault: { } fault } broken
            ? Told(fault, broken.Typed, broken.Piece, broken.Offer, place)
            : null;
    }

    private static EditAnswer? Range(string first, string place) =>
        TypedRange.In(first) is { } range ? EditAnswer.Refuse("edit-range", place, ("typed", range.Words), ("middle", range.Middle)) : null;

    private static EditAnswer? Bracket(string first, string typed, string place) => LineSplit.BracketOf(first) is not var (outside, inside, _) ? null
        : LineSplit.AmountBefore(outside) is null && LineSplit.CountOf(outside) is var (_, name) ? EditAnswer.Refuse("edit-bracket-not-clear", place, ("typed", typed), ("mass", inside), ("name", name))
        : EditAnswer.Refuse("edit-two-amounts", place, ("typed", typed));

    /// <summary>"1 cup 2 tbsp milk", "1 cup honey 20 g".</summary>
    private static EditAnswer? TwoAmounts(string first, string typed, string place) =>
        LineSplit.AmountBefore(first) is { } amount && amount.Length < first.Length && first[(amount.Length + 1)..] is var rest
            && (LineSplit.AmountBefore(rest) is not null || Pieces(rest).Any(TypedLine.IsAmount))
            ? EditAnswer.Refuse("edit-two-amounts", place, ("typed", typed))
            : null;

    /// <summary>"2 eggs": in which sizes such a thing is known. "flour 500": a number and no unit.</summary>
    private static EditAnswer? Count(string first, string typed, Recipe recipe, string place)
    {
        var last = first.LastIndexOf(' ');
        var behind = last > 0 && MixedNumber.Lead(first[(last + 1)..]) is var (amount, length) && length == first.Length - last - 1 && LineSplit.IsName(first[..last])
            ? (amount, first[..last])
            : ((double, string)?)null;
        if ((LineSplit.CountOf(first) ?? behind) is not var (_, name))
        {
            return null;
        }

        var number = TypedLine.Tidy(first.Replace(name, "", StringComparison.Ordinal).Replace(" of ", " ", StringComparison.Ordinal));
        var larder = recipe.LarderOver(Larder.Shipped);
        if (LineSplit.Meant(name, larder) is not { } ingredient)
        {
            // "2 handfuls raisins": the word behind the number may be a unit that is not known.
            return behind is null && name.Contains(' ') && larder.Find(name, []).Kind == MatchKind.Unknown ? null : EditAnswer.Refuse("edit-unit-missing", place, ("typed", typed), ("number", number), ("name", name));
        }

        var sizes = LineSizes.Of(larder, ingredient, recipe.Region);
        return sizes.Count == 0
            ? EditAnswer.Refuse("edit-unit-missing", place, ("typed", typed), ("number", number), ("name", name))
            : EditAnswer.Refuse(
                "edit-size-missing", place, ("typed", typed), ("name", ingredient.Name), ("known", string.Join(", ", sizes)), ("number", number), ("size", LineSizes.Example(sizes)), ("called", name));
    }

    /// <summary>"500 gr flour", "2 handfuls raisins": the word behind the first number, as a unit.</summary>
    private static EditAnswer? UnitOf(string first, string place)
    {
        var parts = first.Split(' ');
        return parts.Length > 2 && QuantityText.TryMass($"{parts[0]} {parts[1]}") is { Fault: QuantityFault.UnitUnknown } read
            ? Told(QuantityFault.UnitUnknown, read.Typed, read.Piece, read.Offer, place)
            : null;
    }

    private static EditAnswer? Inside(string first, string typed, string place)
    {
        var parts = first.Split(' ');
        return parts.Length > 2 && !TypedLine.IsAmount(first) && parts[1..^1].Any(part => part.Any(char.IsAsciiDigit))
            ? EditAnswer.Refuse("edit-amount-inside", place, ("typed", typed))
            : null;
    }

    private static EditAnswer Told(QuantityFault fault, string typed, string piece, string? offer, string place) => EditAnswer.Refuse(
        QuantityFaults.KindOf(fault), place, ("typed", typed), ("piece", piece), ("offer", offer ?? ""), ("units", QuantityText.UnitsOf(QuantityKind.Mass)));

    private static bool MassBehind(string typed) => Unit.Find(typed[(typed.LastIndexOf(' ') + 1)..]) is { Kind: QuantityKind.Mass };

    /// <summary>Every run of words.</summary>
    private static IEnumerable<string> Pieces(string first)
    {
        var parts = first.Split(' ');
        return Enumerable.Range(0, parts.Length).SelectMany(start => Enumerable.Range(1, parts.Length - start).Select(length => string.Join(' ', parts[start..(start + length)])));
    }
}

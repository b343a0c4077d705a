using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Names = Doughwright.Engine.Ingredients.Phrase;

namespace Doughwright.Engine.TextForm;

/// <summary>
/// "2 tbsp", "1 1/2 US cups", "¼ cup", "1 European large", "1 sachet": NUMBER MEASURE. The larder says what one of them weighs, of that ingredient only.
/// </summary>
internal static class MeasureGrammar
{
    /// <summary>A mass that was worked out in another order may differ in its last digits.</summary>
    private const double SameMass = 1e-9;

    private static readonly string[] NotLevel = ["heaped", "heaping", "rounded", "scant", "generous"];

    /// <summary>The number and the measure, when the words are that; null for a weight, also for one with more behind it, and for anything else.</summary>
    public static Household? Read(string typed)
    {
        return QuantityText.TryMass(typed).Value is null && MixedNumber.Lead(typed) is var (amount, length)
            && QuantityReader.Trimmed(typed[length..]) is var unit && IsMeasure(unit)
            ? new(amount, unit)
            : null;
    }

    /// <summary>The line with what its measure weighs; without a mass, and told, when that cannot be known.</summary>
    public static Line Weigh(Line line, Household measured, Phrase quantity, Larder larder)
    {
        if (NotLevel.Intersect(Names.Words(measured.Unit)).FirstOrDefault() is { } heap)
        {
            quantity.Log.Wrong(FormFaults.MeasureNotLevel, quantity.Place, quantity.Position, ("typed", quantity.Text), ("word", heap));
            return line with { Household = measured };
        }

        if (larder.Find(line.Name, line.Conditions).Ingredient is not { } ingredient)
        {
            quantity.Log.Wrong(
                FormFaults.MeasureOfUnknown, quantity.Place, quantity.Position, ("typed", quantity.Text), ("name", line.Name), Deciding(line, measured, larder));
            return line with { Household = measured };
        }

        var match = Find(ingredient, measured.Unit, line.Conditions, larder);
        if (match.Measure is { } measure)
        {
            return line with { Household = measured with { Unit = measure.Unit }, Mass = measure.Mass * measured.Amount };
        }

        var isOpen = match.Kind == MeasureMatchKind.NotClear;
        var offered = (isOpen ? match.Candidates : match.Known).Select(known => known.Unit).Distinct();
        quantity.Log.Wrong(
            isOpen ? FormFaults.MeasureNotClear : offered.Any() ? FormFaults.MeasureNotHeld : FormFaults.NoMeasureHeld,
            quantity.Place,
            quantity.Position,
            ("typed", quantity.Text),
            ("unit", measured.Unit),
            ("name", ingredient.Name),
            ("known", string.Join(", ", offered)),
            Deciding(line, measured, larder));
        return line with { Household = measured };
    }

    /// <summary>What was typed, when it still says the mass of the line.</summary>
    public static string? Typed(Line line, Larder larder)
    {
        if (line.Household is not { } household)
        {
            return null;
        }

        if (line.Mass is not { } mass)
        {
            return line.Typed;
        }

        return Read(line.Typed) is { } read && read.Amount == household.Amount
            && larder.Find(line.Name, line.Conditions).Ingredient is { } ingredient
            && Find(ingredient, read.Unit, line.Conditions, larder).Measure is { } measure
            && measure.Unit == household.Unit && Math.Abs((measure.Mass * read.Amount / mass) - 1) < SameMass
            ? line.Typed
            : null;
    }

    /// <summary>Where the words are clear, when nobody has said yet where they were written.</summary>
    private static (string, object) Deciding(Line line, Household measured, Larder larder) =>
        ("regions", RegionCodes.Deciding(larder, there =>
            there.Find(line.Name, line.Conditions).Ingredient is { } ingredient && Find(ingredient, measured.Unit, line.Conditions, there).Measure is not null));

    /// <summary>A condition of the line can say the form of what is measured: "1 US cup, sifted".</summary>
    private static MeasureMatch Find(Ingredient ingredient, string unit, IReadOnlyList<string> conditions, Larder larder)
    {
        var plain = larder.MeasureOf(ingredient, unit);
        return conditions.Select(condition => larder.MeasureOf(ingredient, $"{unit} {condition}"))
            .FirstOrDefault(match => match.Kind == MeasureMatchKind.Exact) ?? plain;
    }

    /// <summary>Whether some of the words are a household unit of any size.</summary>
    private static bool IsMeasure(string unit)
    {
        var words = Names.Words(unit);
        return unit.Length > 0 && char.IsLetter(unit[0]) && Unit.Find(unit.Split(' ')[0]) is not { Kind: QuantityKind.Mass } && !unit.Any(char.IsAsciiDigit) && Enumerable.Range(0, words.Length).Any(start =>
            Enumerable.Range(1, words.Length - start).Any(length => HouseholdUnit.Meant(string.Join(' ', words[start..(start + length)]), []).Count > 0));
    }
}

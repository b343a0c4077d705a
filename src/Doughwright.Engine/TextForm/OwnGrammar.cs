using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>The small grammars of an own ingredient: its weighings, what it is made from, how much water it takes up.</summary>
internal static class OwnGrammar
{
    public const string Before = "before";
    public const string After = "after";

    private const string BeforeAnd = " before and ";

    /// <summary>"1000 g before and 720 g after".</summary>
    public static Weighings? Weighings(Phrase words)
    {
        if (words.Before(After) is not { } said || said.Around(BeforeAnd) is not var (before, after))
        {
            words.Fault(FormFaults.WeighingsNotUnderstood);
            return null;
        }

        var (first, second) = (before.Mass(Limits.Weighing), after.Mass(Limits.Weighing));
        return first is { } whole && second is { } left && Limits.Weighing.Holds(whole) && Limits.Weighing.Holds(left) ? new(whole, left) : null;
    }

    public static string Text(Weighings weighings) => $"{ExactText.Of(weighings.Before)}{BeforeAnd}{ExactText.Of(weighings.After)} {After}";

    /// <summary>A sample that was dried. One that gained was not.</summary>
    public static Weighings? Dried(Phrase words)
    {
        if (Weighings(words) is not { } dried)
        {
            return null;
        }

        if (dried.After <= dried.Before)
        {
            return dried;
        }

        words.Log.Wrong(FormFaults.DriedGained, words.Place, words.Position, ("before", dried.Before), ("after", dried.After));
        return null;
    }

    /// <summary>"62 %", "62.5 %, farinograph at 14 % moisture".</summary>
    public static Absorption? Absorption(Phrase words)
    {
        var first = words.Split()[0];
        if (first.AnyPercent() is not { } share || !first.Holds(share, Limits.Absorption))
        {
            return null;
        }

        var rest = words.Text[first.Text.Length..].TrimStart(',', ' ');
        return new(share, rest.Length == 0 ? null : rest);
    }

    public static string Text(Absorption absorption) =>
        $"{NumberText.Exact(absorption.Share.Value)} %{(absorption.Words is { } words ? ", " + words : "")}";

    /// <summary>What it is made from, with both weighings; told where that does not tell what it consists of.</summary>
    public static MadeFrom? Made(Section section, string name, Region? region)
    {
        var (from, weighed) = (section.Words(OwnSection.MadeFrom), section.Words(OwnSection.Weighed));
        if (from is null != weighed is null)
        {
            var there = section.Entry(from is null ? OwnSection.Weighed : OwnSection.MadeFrom)!;
            section.Log.Fault(FormFaults.MadeHalfSaid, section.PlaceOf(there.Key), there.KeyPosition, ("name", name), ("missing", from is null ? OwnSection.MadeFrom : OwnSection.Weighed));
        }

        if (from is null || weighed is null || Weighings(weighed) is not { } weighings)
        {
            return null;
        }

        var made = new MadeFrom(from.Text, weighings);
        if (made.RowIn(Larder.Shipped, region) is not { Composition.Water: { } water } row)
        {
            from.Log.Wrong(FormFaults.MadeFromUnknown, from.Place, from.Position, ("words", from.Text), ("nearest", NearestTo(from.Text, region)));
            return made;
        }

        if (made.Of(row) is null)
        {
            weighed.Log.Wrong(
                FormFaults.MadeCannotBe,
                weighed.Place,
                weighed.Position,
                ("name", row.Name),
                ("before", weighings.Before),
                ("after", weighings.After),
                ("least", Mass.FromGrams(weighings.Before.Grams * (100 - water) / 100)));
        }

        return made;
    }

    /// <summary>Names to choose from, where the words are nobody's or several rows'.</summary>
    private static string NearestTo(string words, Region? region)
    {
        string[] pieces = [.. words.Split(',').Select(word => word.Trim())];
        var match = Larder.Shipped.Find(pieces[0], pieces[1..], region);
        return string.Join(", ", match.Candidates.Count > 0 ? match.Candidates.Select(row => row.Name).Take(4) : match.Nearest);
    }
}

using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>
/// What stands behind the name of a line: QUANTITY[, word]*. "160 g, boiled, peeled, mashed", "12.5 %, soft", "all of it, at 28 C", "100 g, boiling".
/// </summary>
internal sealed class LineGrammar
{
    public const string AllOfIt = "all of it";
    public const string Boiling = "boiling";
    public const string FromTheFridge = "from the fridge";
    public const string FromTheTap = "from the tap";
    public const string AtRoomTemperature = "at room temperature";
    public const string CountsAs = "counts as";
    public const string Weighed = "weighed";
    public const string Peeled = "peeled";
    public const string Cooked = "cooked";

    private static readonly string[] WarmthWords = [Boiling, FromTheFridge, FromTheTap, AtRoomTemperature];

    private readonly List<string> conditions = [];
    private LineWarmth? warmth;
    private string? countsAs;
    private Weighed? weighed;

    /// <summary>The line without its component, or null when its quantity cannot be read.</summary>
    /// <param name="larder">Says what household measures weigh.</param>
    public static Line? Read(string name, Position position, Phrase value, Larder larder)
    {
        var pieces = value.Split();
        var grammar = new LineGrammar();
        var all = pieces[0].Text == AllOfIt;
        var household = all ? null : MeasureGrammar.Read(pieces[0].Text);
        var share = all || household is not null || !IsShare(pieces[0].Text) ? null : Share(pieces[0]);
        var mass = all || household is not null || IsShare(pieces[0].Text) ? null : pieces[0].Mass();
        foreach (var piece in pieces.Skip(1))
        {
            grammar.Take(piece);
        }

        if (!all && household is null && mass is null && share is null)
        {
            return null;
        }

        var line = new Line
        {
            Id = Slug.Of(name),
            Name = name,
            Mass = mass,
            Share = share,
            Typed = pieces[0].Text,
            Conditions = grammar.conditions,
            Warmth = grammar.warmth ?? LineWarmth.AsTheRoom,
            CountsAs = grammar.countsAs,
            Weighed = grammar.weighed,
            Position = position,
        };
        return household is null ? line : MeasureGrammar.Weigh(line, household, pieces[0], larder);
    }

    /// <summary>Whether an amount is a percentage, understood or not.</summary>
    public static bool IsShare(string typed) => typed.EndsWith('%');

    private static Percent? Share(Phrase typed) =>
        typed.AnyPercent() is { } share && typed.Holds(share, Limits.Share) ? share : null;

    private void Take(Phrase piece)
    {
        if (piece.After(CountsAs) is { } role)
        {
            TakeRole(role);
        }
        else if (piece.After(Weighed) is { } weighing)
        {
            TakeWeighed(weighing);
        }
        else if (WarmthOf(piece) is var (isWarmth, found) && isWarmth)
        {
            if (warmth is not null)
            {
                piece.Fault(FormFaults.WarmthTwice);
            }

            warmth ??= found;
        }
        else if (piece.Text.Length == 0 || piece.Text.Any(char.IsAsciiDigit))
        {
            piece.Fault(piece.Text.Length == 0 ? QuantityFaults.KindOf(QuantityFault.Empty) : FormFaults.NumberInWords);
        }
        else
        {
            TakeCondition(piece);
        }
    }

    private static (bool IsWarmth, LineWarmth? Found) WarmthOf(Phrase piece) => piece.Text switch
    {
        Boiling => (true, new(WarmthKind.Boiling, null)),
        FromTheFridge => (true, new(WarmthKind.Fridge, null)),
        FromTheTap => (true, new(WarmthKind.Tap, null)),
        AtRoomTemperature => (true, LineWarmth.AsTheRoom),
        _ => piece.After("at") is { } stated
            ? (true, stated.Temperature(Limits.Line) is { } temperature ? LineWarmth.At(temperature) : null)
            : (false, null),
    };

    private void TakeRole(Phrase role)
    {
        if (EnumWords<Role>.Find(role.Text) is not null)
        {
            countsAs = role.Text;
            return;
        }

        role.Log.Fault(FormFaults.UnknownRole, role.Place, role.Position, Phrase.UnknownWord(role.Text, [.. EnumWords<Role>.All]));
    }

    /// <summary>"weighed 200 g peeled and 170 g cooked"; inside quotes also with a colon between the two.</summary>
    private void TakeWeighed(Phrase weighing)
    {
        if ((weighing.Around(" and ") ?? weighing.Around(":")) is not var (before, after) || before.Before(Peeled) is not { } raw
            || after.Before(Cooked) is not { } cooked)
        {
            weighing.Fault(FormFaults.WeighedNotUnderstood);
            return;
        }

        if (raw.Mass() is { } rawMass && cooked.Mass() is { } cookedMass)
        {
            weighed = new(rawMass, cookedMass);
        }
    }

    /// <summary>
    /// Conditions are an open list that the larder looks at. Only words that are nearly a warmth are asked about, because a warmth changes
    /// the dough.
    /// </summary>
    private void TakeCondition(Phrase piece)
    {
        var word = piece.Text.ToLowerInvariant();
        var nearest = Nearest.Of(word, WarmthWords);
        if (Nearest.Distance(word, nearest) <= 2)
        {
            piece.Log.Warn(FormFaults.NearlyKnownWord, piece.Place, piece.Position, ("word", piece.Text), ("nearest", nearest));
        }

        conditions.Add(word);
    }
}

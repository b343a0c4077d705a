using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>
/// "105 min on 9 November", "26 C", "20 min and 93 C on 9 November, in a room of 22 C, seen 3 times"; a comma does for the "and".
/// </summary>
internal static class MeasuredGrammar
{
    public const string And = " and ";
    public const string Comma = ", ";
    public const string On = " on ";
    public const string InARoomOf = "in a room of";
    public const string Seen = "seen";
    public const string Times = "times";

    /// <param name="limit">Of the temperature, which means another thing in each kind of step.</param>
    public static Measured? Read(Phrase words, Limit<Temperature> limit)
    {
        var (rest, conditions) = ConditionsOf(words);
        var (quantities, on) = rest.Around(On) is var (before, after) ? (before, after.Text) : (rest, null);
        Duration? time = null;
        Temperature? temperature = null;
        foreach (var quantity in (quantities.Around(And) ?? quantities.Around(Comma)) is var (first, second) ? [first, second] : new[] { quantities })
        {
            // A temperature is known by its unit; everything else is read, and told, as a time.
            if (temperature is null && QuantityText.TryDuration(quantity.Text).Fault == QuantityFault.UnitOfAnotherKind)
            {
                temperature = quantity.Temperature(limit);
            }
            else if (time is null)
            {
                time = quantity.Duration(Limits.Step);
            }
            else
            {
                quantity.Fault(FormFaults.MeasuredNotUnderstood);
            }
        }

        return conditions is not var (air, seen) || (time is null && temperature is null) ? null : new(time, temperature, on, seen) { Air = air };
    }

    /// <summary>Takes "in a room of 22 C" and "seen 3 times" off the end, in either order; null when one of them cannot be read.</summary>
    private static (Phrase Before, (Temperature? Air, int Seen)? Conditions) ConditionsOf(Phrase words)
    {
        Temperature? air = null;
        var seen = 1;
        var understood = true;
        for (var rest = words; ;)
        {
            var last = rest.Split()[^1];
            if (last.After(Seen)?.Before(Times) is { } count)
            {
                understood &= count.Count(Limits.Pieces) is { } times && (seen = times) > 0;
            }
            else if (last.After(InARoomOf) is { } room)
            {
                understood &= (air = room.Temperature(Limits.Air)) is not null;
            }
            else
            {
                return (rest, understood ? (air, seen) : null);
            }

            var before = rest.Part(0, last.Position.Column - rest.Position.Column);
            rest = before.Text.EndsWith(',') ? before.Part(0, before.Text.Length - 1) : before;
        }
    }
}

using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>"105 min on 9 November", "26 C", "20 min and 93 C on 9 November, seen 3 times"; a comma does for the "and".</summary>
internal static class MeasuredGrammar
{
    public const string And = " and ";
    public const string Comma = ", ";
    public const string On = " on ";
    public const string Seen = "seen";
    public const string Times = "times";

    /// <param name="limit">Of the temperature, which means another thing in each kind of step.</param>
    public static Measured? Read(Phrase words, Limit<Temperature> limit)
    {
        var (rest, timesSeen) = SeenTimes(words);
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

        return timesSeen is not { } seen || (time is null && temperature is null) ? null : new(time, temperature, on, seen);
    }

    /// <summary>Takes "seen 3 times" off the end; once when it is not there, null when it cannot be read.</summary>
    private static (Phrase Before, int? Times) SeenTimes(Phrase words)
    {
        if (words.Split() is not [.., { } last] || last.After(Seen)?.Before(Times) is not { } count)
        {
            return (words, 1);
        }

        var rest = words.Part(0, last.Position.Column - words.Position.Column);
        return (rest.Text.EndsWith(',') ? rest.Part(0, rest.Text.Length - 1) : rest, count.Count(Limits.Pieces));
    }
}

using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>"butter by sunflower oil, in dough, tried on 3 May, a softer crumb": WHAT by WHAT[, in PART][, tried on DAY | , not tried][, words].</summary>
internal static class SwapGrammar
{
    public const string By = " by ";
    public const string In = "in";
    public const string TriedOn = "tried on";
    public const string NotTried = "not tried";

    public static AllowedSwap? Read(Phrase words, PartsSection parts)
    {
        var pieces = words.Split();
        if (pieces[0].Around(By) is not ({ Text.Length: > 0 } what, { Text.Length: > 0 } by))
        {
            words.Fault(FormFaults.SwapNotUnderstood);
            return null;
        }

        var next = 1;
        string? part = null;
        if (pieces.ElementAtOrDefault(next)?.After(In) is { } where)
        {
            next++;
            part = Part(where, parts);
        }

        string? tried = null;
        if (pieces.ElementAtOrDefault(next) is { } said && (said.Text == NotTried || said.After("tried") is not null))
        {
            next++;
            tried = said.After(TriedOn)?.Text;
            if (said.Text != NotTried && tried is null or { Length: 0 })
            {
                said.Fault(FormFaults.SwapNotUnderstood);
                return null;
            }
        }

        var rest = next < pieces.Count ? words.Text[(pieces[next].Position.Column - words.Position.Column)..] : "";
        return new(what.Text, by.Text, part, words.Position) { Tried = tried, Words = rest.Length == 0 ? null : rest };
    }

    /// <summary>Whether it was tried is always said, so that words behind it are never taken for something else.</summary>
    public static string Write(AllowedSwap swap)
    {
        string?[] pieces =
        [
            swap.What + By + swap.By,
            swap.Part is { } part ? $"{In} {part}" : null,
            swap.Tried is { } day ? $"{TriedOn} {day}" : NotTried,
            swap.Words,
        ];
        return string.Join(", ", pieces.OfType<string>());
    }

    private static string? Part(Phrase where, PartsSection parts)
    {
        var part = Slug.Of(where.Text);
        if (parts.Has(part))
        {
            return part;
        }

        where.Log.Wrong(
            FormFaults.SwapOfUnknownPart,
            where.Place,
            where.Position,
            [("part", where.Text), .. Phrase.UnknownWord(where.Text, [.. parts.Ids])]);
        return null;
    }
}

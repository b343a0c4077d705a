using System.CommandLine;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Commands;

/// <summary>What was typed behind options, as values. What cannot be one becomes a fault, and the rest is read all the same.</summary>
internal sealed class Given(ParseResult parsed, Faults faults)
{
    public Faults Faults => faults;

    public bool Has(Option option) => parsed.GetResult(option) is { Implicit: false };

    /// <summary>
    /// The words that belong to no option and look like none. Where there are several, those behind an option that is not known are its values: one slip
    /// of the finger is then told once.
    /// </summary>
    public IReadOnlyList<string> Files(Argument argument)
    {
        var words = (parsed.GetResult(argument)?.Tokens ?? []).Select(token => token.Value).ToArray();
        var files = words.Where(word => !Strays.IsOption(word)).ToArray();
        return files.Length < 2 ? files : [.. words.Where((word, i) => !Strays.IsOption(word) && (i == 0 || !Strays.IsOption(words[i - 1])))];
    }

    /// <summary>Every value of an option that may be given several times.</summary>
    public IReadOnlyList<string> All(Option option)
    {
        if (parsed.GetResult(option) is not { Implicit: false } result)
        {
            return [];
        }

        if (result.IdentifierTokenCount > result.Tokens.Count)
        {
            faults.Add("option-without-value", ("option", option.Name), ("example", Example(option)));
        }

        var values = result.Tokens.Select(token => token.Value).ToArray();
        if (values.Any(string.IsNullOrWhiteSpace))
        {
            faults.Add("option-without-value", ("option", option.Name), ("example", Example(option)));
        }

        return [.. values.Where(value => !string.IsNullOrWhiteSpace(value))];
    }

    /// <summary>The value of an option that is given once.</summary>
    public string? One(Option option)
    {
        var all = All(option);
        if (all.Count > 1)
        {
            faults.Add("option-twice", ("option", option.Name), ("values", all));
        }

        return all.Count == 0 ? null : all[0];
    }

    public Temperature? Temperature(Option option, Limit<Temperature> limit) =>
        One(option) is { } text ? Temperature(option.Name, text, limit) : null;

    public Temperature? Temperature(string option, string text, Limit<Temperature> limit) =>
        Held(option, QuantityText.TryTemperature(text), QuantityKind.Temperature, limit);

    public Length? Length(Option option, Limit<Length> limit) =>
        One(option) is { } text ? Held(option.Name, QuantityText.TryLength(text), QuantityKind.Length, limit) : null;

    public int? Count(Option option, Limit<int> limit) => One(option) is { } text ? Count(option.Name, text, limit) : null;

    /// <summary>A bare number: things that are counted have no unit.</summary>
    public int? Count(string option, string text, Limit<int> limit) => Held(option, QuantityText.TryCount(text), null, limit);

    public Mass? Mass(Option option, Limit<Mass> limit) => One(option) is { } text ? Mass(option.Name, text, limit) : null;

    public Power? Power(Option option, Limit<Power> limit) =>
        One(option) is { } text ? Held(option.Name, QuantityText.TryPower(text), QuantityKind.Power, limit) : null;

    public Mass? Mass(string option, string text, Limit<Mass> limit) => Held(option, QuantityText.TryMass(text), QuantityKind.Mass, limit);

    /// <summary>One word of a closed list.</summary>
    public T? Word<T>(string option, string text, IReadOnlyDictionary<string, T> words) where T : struct
    {
        if (words.TryGetValue(text, out var value))
        {
            return value;
        }

        faults.AddUnknown("word-unknown", text, [.. words.Keys], ("option", option));
        return null;
    }

    /// <summary>"NAME=VALUE", for options that name a line or a step.</summary>
    public IEnumerable<(string Name, string Value)> Pairs(Option option)
    {
        foreach (var text in All(option))
        {
            var halves = text.Split('=', 2, StringSplitOptions.TrimEntries);
            if (halves[0].Length == 0 || halves.Length < 2)
            {
                faults.Add("pair-wanted", ("option", option.Name), ("given", text), ("example", Example(option)));
            }
            else if (halves[1].Length == 0)
            {
                faults.Add("pair-without-value", ("option", option.Name), ("name", halves[0]), ("example", Example(option)));
            }
            else
            {
                yield return (halves[0], halves[1]);
            }
        }
    }

    public string Example(Option option) => Example(option.Name);

    /// <summary>Two commands may mean different things by one name; then the command's own example counts.</summary>
    private string Example(string option) => faults.Voice.Words.Find($"example.{parsed.CommandResult.Command.Name}{option[1..]}") ?? faults.Voice.Words["example" + option[1..]];

    private T? Held<T>(string option, Parsed<T> parsed, QuantityKind? kind, Limit<T> limit) where T : struct, IComparable<T>
    {
        if (parsed.Fault is { } fault)
        {
            faults.AddOfOption(option, QuantityFaults.KindOf(fault), ("typed", parsed.Typed), ("piece", parsed.Piece), ("offer", parsed.Offer ?? ""),
                ("units", kind is { } known ? QuantityText.UnitsOf(known) : ""), ("example", Example(option)));
            return null;
        }

        if (parsed.Value is { } value && !limit.Holds(value))
        {
            faults.AddOfOption(option, limit.Kind, ("value", value), ("low", limit.Low), ("high", limit.High), ("typed", parsed.Typed));
            return null;
        }

        return parsed.Value;
    }
}

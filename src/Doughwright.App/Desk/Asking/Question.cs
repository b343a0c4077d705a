using System.Text;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Asking;

/// <summary>
/// What an address asks of a rehearsal, as it was typed: names and values of the options of "rehearse", without their dashes. Immutable; two questions
/// that ask the same are equal.
/// </summary>
internal sealed class Question : IEquatable<Question>
{
    /// <summary>Says that the dough takes its own way in another kitchen. It belongs to the desk and is no option.</summary>
    public const string AsWrittenName = "as-written";

    public const string Kitchen = "kitchen";
    public const string Air = "air";
    public const string Start = "start";
    public const string Ingredients = "ingredients";
    public const string Altitude = "altitude";
    public const string Oven = "oven";
    public const string Tap = "tap";
    public const string Fridge = "fridge";
    public const string Proof = "proof";
    public const string Dough = "dough";
    public const string Free = "free";
    public const string Measures = "measures";

    /// <summary>Single properties of a kitchen, in the order in which a sentence tells them.</summary>
    public static IReadOnlyList<string> OfKitchen { get; } = [Air, Start, Ingredients, Altitude, Oven, Tap, Fridge, Proof];

    /// <summary>Every option that an address may name, in the order in which it is written.</summary>
    public static IReadOnlyList<string> Known { get; } =
        [Kitchen, .. OfKitchen, "at", "pour", "bowl", "variant", "weighed", Dough, Free, Measures];

    private readonly Asked[] items;

    private Question(IEnumerable<Asked> items) => this.items = [.. items.OrderBy(Rank)];

    public static Question Nothing { get; } = new([]);

    /// <summary>In the order of <see cref="Known"/>; what is not known comes last.</summary>
    public IReadOnlyList<Asked> Items => items;

    /// <summary>Whether the address says that the recipe is taken as written, wherever it is made.</summary>
    public bool AsWritten => Has(AsWrittenName);

    /// <summary>Whether the kitchen is another than the one it is named after. The hour at which somebody begins changes nothing about it.</summary>
    public bool ChangesKitchen => OfKitchen.Any(name => name != Start && Has(name));

    /// <summary>Reads the query of an address.</summary>
    /// <param name="query">With or without its question mark.</param>
    /// <param name="besides">Names that belong to the page itself.</param>
    public static Question Of(string query, params IReadOnlyCollection<string> besides) => new(
        from pair in QueryHelpers.ParseQuery(query)
        where !besides.Contains(pair.Key)
        from value in pair.Value
        where pair.Key.Length > 0 || !string.IsNullOrEmpty(value)
        select new Asked(pair.Key, value ?? ""));

    public bool Has(string name) => Array.Exists(items, item => item.Name == name);

    /// <summary>The first value of a name, or null.</summary>
    public string? First(string name) => Array.Find(items, item => item.Name == name)?.Value;

    /// <summary>The same with this value in place of all of this name; null takes the name away.</summary>
    public Question With(string name, string? value) =>
        new(items.Where(item => item.Name != name).Concat(value is null ? [] : [new Asked(name, value)]));

    public Question Without(params IReadOnlyCollection<string> names) => new(items.Where(item => !names.Contains(item.Name)));

    /// <summary>Only what is named.</summary>
    public Question Only(IEnumerable<Asked> kept) => new(kept);

    /// <summary>As the query of an address, with its question mark; empty when nothing is asked.</summary>
    public string Query()
    {
        var query = new StringBuilder();
        foreach (var (name, value) in items)
        {
            query.Append(query.Length == 0 ? '?' : '&').Append(Written(name));
            if (value.Length > 0 || name != AsWrittenName)
            {
                query.Append('=').Append(Written(value));
            }
        }

        return query.ToString();
    }

    public bool Equals(Question? other) => other is not null && items.AsSpan().SequenceEqual(other.items);

    public override bool Equals(object? obj) => Equals(obj as Question);

    public override int GetHashCode() => items.Aggregate(items.Length, HashCode.Combine);

    /// <summary>Escaped, but for the marks that may stand in a query and that people read.</summary>
    private static string Written(string text) => Uri.EscapeDataString(text)
        .Replace("%2C", ",", StringComparison.Ordinal)
        .Replace("%3A", ":", StringComparison.Ordinal)
        .Replace("%40", "@", StringComparison.Ordinal);

    private static int Rank(Asked item)
    {
        var rank = Known.ToList().IndexOf(item.Name);
        return rank < 0 ? int.MaxValue : rank;
    }
}

/// <summary>One thing asked: name of an option and what was typed for it.</summary>
internal sealed record Asked(string Name, string Value)
{
    /// <summary>As an argument of a command line.</summary>
    public string Argument => $"--{Name}={Value}";
}

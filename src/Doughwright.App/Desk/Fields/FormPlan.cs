using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.App.Desk.Fields;

/// <summary>Which fields the form of a text has.</summary>
/// <param name="Words">By which the words of the form are found.</param>
/// <param name="Order">All keys in the order of the text.</param>
internal sealed record FormPlan(string Words, IReadOnlyList<FieldGroup> Groups, IReadOnlyList<string> Order)
{
    /// <summary>The words that can stand behind a key; null where it is written freely.</summary>
    public Func<string, IReadOnlyList<string>?> Choices { get; init; } = _ => null;

    /// <summary>Keys that are asked only where a text has them.</summary>
    public IReadOnlyList<string> Rare { get; init; } = [];

    /// <summary>Keys with several lines.</summary>
    public IReadOnlyList<string> Long { get; init; } = [];

    /// <summary>Units of bare numbers, metric and of the United States, by key.</summary>
    public IReadOnlyDictionary<string, (string Metric, string Us)> Units { get; init; } = new Dictionary<string, (string, string)>();

    /// <summary>Keys of findings that are about the text as a whole, by their kind.</summary>
    public IReadOnlyDictionary<string, string> Missing { get; init; } = new Dictionary<string, string>();

    public IEnumerable<string> Keys => Groups.SelectMany(group => group.Keys);

    /// <summary>Empty where a key has no unit of its own.</summary>
    public string UnitOf(string key, MeasureSystem measures) => Units.TryGetValue(key, out var units) ? measures == MeasureSystem.Us ? units.Us : units.Metric : "";

    /// <summary>The unit as it stands beside the field.</summary>
    public string ShownUnitOf(string key, MeasureSystem measures) => UnitOf(key, measures) is var unit && unit is "C" or "F" ? "°" + unit : unit;

    /// <summary>What was typed, with the unit of the field where it is a bare number.</summary>
    public string Complete(string key, string typed, MeasureSystem measures) =>
        UnitOf(key, measures) is { Length: > 0 } unit && QuantityText.TryNumber(typed).Ok ? $"{typed} {unit}" : typed;

    /// <summary>What stands in the field: the unit that it has stands outside.</summary>
    public string Bare(string key, string typed, MeasureSystem measures) =>
        UnitOf(key, measures) is { Length: > 0 } unit && typed.EndsWith(unit, StringComparison.Ordinal) && QuantityText.TryNumber(typed[..^unit.Length].Trim()).Ok
            ? typed[..^unit.Length].Trim()
            : typed;

    /// <summary>The key that a finding is about; null when it is about none.</summary>
    public string? KeyOf(Finding finding) =>
        Missing.GetValueOrDefault(finding.Kind)
        ?? Keys.FirstOrDefault(key => finding.Place == Slug.Of(key) || finding.Place.StartsWith(Slug.Of(key) + ".", StringComparison.Ordinal))
        ?? (finding.Arguments.GetValueOrDefault("entry") is string entry ? Keys.FirstOrDefault(key => key == entry) : null);
}

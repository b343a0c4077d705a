namespace Doughwright.Engine.Rehearsals;

/// <summary>Why a figure is what it is: a small tree. Where a reason is additive, its parts add up to its value.</summary>
/// <param name="Kind">Key of its words in the resources: "heat-of-line".</param>
/// <param name="Subject">What it is about, as the author named it: "butter"; null where the kind says it all.</param>
/// <param name="Value">Null when it is a plain statement.</param>
/// <param name="Unit">Unit of the value: "°C", "min", "K", "g", or empty for a pure number.</param>
/// <param name="Source">Id of the source it rests on.</param>
/// <param name="Additive">Whether the parts add up to the value.</param>
public sealed record Reason(string Kind, string? Subject, double? Value, string Unit, string? Source, bool Additive, IReadOnlyList<Reason> Parts)
{
    /// <summary>A reason without parts.</summary>
    public static Reason Leaf(string kind, double? value, string unit, string? subject = null, string? source = null) =>
        new(kind, subject, value, unit, source, false, []);

    /// <summary>A reason whose parts add up to its value.</summary>
    public static Reason Sum(string kind, double value, string unit, IReadOnlyList<Reason> parts, string? subject = null) =>
        new(kind, subject, value, unit, null, true, parts);

    /// <summary>A reason that rests on its parts without being their sum.</summary>
    public static Reason From(string kind, double? value, string unit, IReadOnlyList<Reason> parts, string? subject = null, string? source = null) =>
        new(kind, subject, value, unit, source, false, parts);
}

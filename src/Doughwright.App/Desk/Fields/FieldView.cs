namespace Doughwright.App.Desk.Fields;

/// <summary>A field of a form: what stands behind one key of a text.</summary>
/// <param name="Id">Of the field, and its name in the form.</param>
/// <param name="Hint">How it can be written, and what is taken when nothing is; empty where that is plain.</param>
/// <param name="Unit">Of a bare number; empty where the unit is typed.</param>
/// <param name="Choices">What it can be, value and name; empty for what is typed.</param>
/// <param name="IsLong">Whether it has several lines.</param>
/// <param name="Reasons">Why what was typed is not taken.</param>
public sealed record FieldView(
    string Id, string Label, string Hint, string Typed, string Unit, IReadOnlyList<(string Value, string Name)> Choices, bool IsLong, IReadOnlyList<string> Reasons)
{
    public bool IsRefused => Reasons.Count > 0;

    /// <summary>Ids of what is said about it.</summary>
    public string? DescribedBy => string.Join(' ', new[] { IsRefused ? Id + "-why" : null, Hint.Length > 0 ? Id + "-hint" : null }.OfType<string>()) is { Length: > 0 } ids ? ids : null;
}

/// <summary>A group of fields under its head.</summary>
/// <param name="Note">What to know of all of them; empty for nothing.</param>
public sealed record FieldsView(string Id, string Title, string Note, IReadOnlyList<FieldView> Fields);

using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>A cell of the sheet: what was typed, or what follows from it.</summary>
/// <param name="Id">Of the field.</param>
/// <param name="Text">As it stands in the field.</param>
/// <param name="IsTyped">Whether the author typed it; the other figure of the line follows.</param>
/// <param name="Label">For those who hear the page.</param>
/// <param name="Exact">Unrounded; null where nothing is known.</param>
/// <param name="Of">Where it stands in the JSON of the command line.</param>
public sealed record CellView(string Id, string Text, bool IsTyped, string Label, string? Exact, string Of)
{
    private const string Grams = "\u00a0g";
    private const string PercentSign = "\u00a0%";

    internal static CellView Weight(ComponentFormula part, LineFormula line, Voice voice)
    {
        var source = line.Source;
        var isTyped = source.Share is null && (source.Mass is not null || source.Household is not null);
        return new(
            FieldOf("weight", part, line),
            isTyped ? Typed(source.Typed, voice) : line.IsMassKnown ? Bare(voice.Text(line.Mass), Grams) : "",
            isTyped,
            voice.Say(isTyped ? "write.cell-weight-typed" : "write.cell-weight", ("line", line.Name)),
            line.IsMassKnown ? Digits.Of(line.Mass.Grams) : null,
            $"formula.components.{part.Id}.lines.{line.Id}.grams");
    }

    internal static CellView Percent(ComponentFormula part, LineFormula line, Voice voice)
    {
        var isTyped = line.Source.Share is not null;
        return new(
            FieldOf("percent", part, line),
            isTyped ? line.Source.Typed.TrimEnd('%', ' ') : line.Percent is { } percent ? Bare(voice.Text(percent), PercentSign) : "",
            isTyped,
            voice.Say(isTyped ? "write.cell-percent-typed" : "write.cell-percent", ("line", line.Name)),
            line.Percent is { } known ? Digits.Of(known.Value) : null,
            $"formula.components.{part.Id}.lines.{line.Id}.percent");
    }

    internal static CellView Warmth(ComponentFormula part, LineFormula line, Temperature? goesIn, Voice voice)
    {
        var isTyped = line.Source.Warmth.Stated is not null;
        return new(
            FieldOf("warmth", part, line),
            goesIn is { } known ? Bare(voice.Text(known, isTyped ? "written" : "asked"), voice.DegreeUnit) : "",
            isTyped,
            voice.Say(isTyped ? "write.cell-warmth-typed" : "write.cell-warmth", ("line", line.Name)),
            null,
            "");
    }

    private static string FieldOf(string column, ComponentFormula part, LineFormula line) => $"{column}-{part.Id}-{line.Id}";

    /// <summary>Grams are what the column is headed with; every other unit stands in the cell.</summary>
    private static string Typed(string typed, Voice voice) =>
        voice.Measures == MeasureSystem.Metric && typed.EndsWith('g') && QuantityText.TryNumber(typed[..^1].Trim()).Ok ? typed[..^1].Trim() : typed.Trim();

    private static string Bare(string text, string unit) => text.EndsWith(unit, StringComparison.Ordinal) ? text[..^unit.Length] : text;
}

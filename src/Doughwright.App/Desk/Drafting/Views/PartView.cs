using Doughwright.App.Desk.Recipes.Views;
using Doughwright.Engine.Formulas;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>A part of the sheet with its lines.</summary>
/// <param name="Facts">"801 g, percentages of 320 g".</param>
/// <param name="Sum">What it weighs in all, without its unit where the column says it.</param>
/// <param name="Others">Parts that a line can be moved into.</param>
public sealed record PartView(
    string Id, string Place, string Name, string Facts, string Sum, string SumExact, IReadOnlyList<LineView> Lines, IReadOnlyList<FindingView> Findings, IReadOnlyList<(string Id, string Name)> Others)
{
    /// <summary>Where its weight stands in the JSON of the command line.</summary>
    public string SumOf => $"formula.components.{Id}.grams";

    internal static PartView Of(Formula formula, ComponentFormula part, PlacedFindings findings, WarmthCells warmth, Voice voice)
    {
        var place = $"parts.{part.Id}";
        LineView[] lines = [.. part.Lines.Select(line => LineView.Of(part, line, findings, warmth, voice))];
        return new(
            part.Id,
            place,
            part.Name,
            voice.Say("write.part-facts", ("weight", part.Mass), ("base", part.Base)),
            voice.Text(part.Mass),
            Digits.Of(part.Mass.Grams),
            lines,
            findings.Take(place),
            [.. formula.Components.Where(other => other.Id != part.Id).Select(other => (other.Id, other.Name))]);
    }
}

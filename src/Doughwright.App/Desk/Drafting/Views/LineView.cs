using Doughwright.App.Desk.Recipes.Views;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Formulas;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>A line of the sheet.</summary>
/// <param name="Place">By which it is opened, and under which its findings stand.</param>
/// <param name="Rest">What it says behind its amount: "soft, at 28 C".</param>
/// <param name="IsPart">Whether another part goes in by it.</param>
public sealed record LineView(string Part, string Id, string Place, string Name, string Rest, bool IsPart, CellView Weight, CellView Percent, CellView Warmth, IReadOnlyList<FindingView> Findings)
{
    /// <summary>As it heads its row.</summary>
    public string Shown => Capital.Of(Name);

    internal static LineView Of(ComponentFormula part, LineFormula line, PlacedFindings findings, WarmthCells warmth, Voice voice)
    {
        var place = $"parts.{part.Id}.{line.Id}";
        return new(
            part.Id, line.Id, place, line.Name, LineEdits.Rest(line.Source), line.Source.Uses is not null,
            CellView.Weight(part, line, voice), CellView.Percent(part, line, voice), CellView.Warmth(part, line, warmth.Of(part.Id, line.Source), voice), findings.Take(place));
    }
}

using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>Whole pieces that were asked for, "egg" in every part it stands in and "egg@wash" in one. Only the neighbours of what is needed can be had.</summary>
internal sealed class TakenPieces(IReadOnlyDictionary<string, int> take)
{
    private const char In = '@';

    /// <summary>How many were asked for of a line; null where it is weighed. One part goes before every part.</summary>
    public int? Of(string component, string line) =>
        take.TryGetValue($"{line}{In}{component}", out var here) ? here : take.TryGetValue(line, out var everywhere) ? everywhere : null;

    /// <summary>What comes in no pieces, and numbers that are not offered.</summary>
    public IEnumerable<Finding> Refused(Formula formula, double factor) => NotPieces(formula).Concat(NotOffered(formula, factor));

    private IEnumerable<Finding> NotPieces(Formula formula) =>
        from key in take.Keys
        let names = key.Split(In)
        let lines = formula.Components
            .Where(component => names.Length == 1 || component.Id == names[1])
            .SelectMany(component => component.Lines)
            .Where(line => line.Id == names[0])
            .ToList()
        where !lines.Any(line => WholeThings.PieceOf(line) is not null)
        select Report.Make("resize-not-in-pieces", Grade.Error, "parts", Position.None, ("name", lines.FirstOrDefault()?.Name ?? key));

    private IEnumerable<Finding> NotOffered(Formula formula, double factor) =>
        from component in formula.Components
        from line in component.Lines
        where line.Mass > Mass.Zero
        let count = Of(component.Id, line.Id)
        let piece = WholeThings.PieceOf(line)
        where count is not null && piece is not null
        let needed = line.Mass * factor / piece.Value
        let offered = WholeThings.Neighbours(needed)
        where !offered.Contains(count.Value)
        select Report.Make(
            "resize-take-not-offered",
            Grade.Error,
            Report.PlaceOf(component.Id, line.Id),
            line.Source.Position,
            ("name", line.Name),
            ("part", component.Name),
            ("count", count.Value),
            ("needed", needed),
            ("offered", offered.Select(each => NumberText.Exact(each)).ToArray()),
            ("example", $"{line.Id}{In}{component.Id}={NumberText.Exact(offered[0])}"));
}

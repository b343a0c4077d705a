using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>
/// Holds the salt of the dough, and of every part outside it: what a salted butter brings, the salt itself gives. It gives down to half and takes
/// up to double, as every line that makes good; what it cannot hold is told by <see cref="SaltNotes"/>.
/// </summary>
internal static class SaltHold
{
    // In percent of flour. Less cannot be tasted, and every ingredient holds a trace.
    public const double WorthHolding = 0.1;

    public static IReadOnlyList<PartEdit> Held(Formula formula, IReadOnlyList<PartEdit> edits)
    {
        var inDough = edits.Where(edit => edit.Component.ShareInDough > 0).ToArray();
        IEnumerable<PartEdit[]> scopes = [inDough, .. edits.Except(inDough).Select(edit => new[] { edit })];
        foreach (var scope in scopes.Where(scope => scope.Length > 0))
        {
            edits = Held(formula, edits, scope);
        }

        return edits;
    }

    private static IReadOnlyList<PartEdit> Held(Formula formula, IReadOnlyList<PartEdit> edits, PartEdit[] scope)
    {
        var isDough = scope[0].Component.ShareInDough > 0;
        double ShareOf(ComponentFormula component) => isDough ? component.ShareInDough : 1;
        var (basis, parts) = isDough
            ? (formula.Flour, formula.Components.Where(component => component.ShareInDough > 0))
            : (scope[0].Component.Base, [scope[0].Component]);
        var more = scope.Aggregate((double?)0, (sum, edit) => sum + (ShareOf(edit.Component) * More(edit)));
        var (where, salt) = parts
            .SelectMany(component => component.Lines.Select(line => (component, line)))
            .Where(at => at.line is { Role: Role.Salt, Source.Uses: null, Composition.Salt: > 0 })
            .Where(at => !scope.Any(edit => edit.Component.Id == at.component.Id && edit.Lines.Any(change => change.Line == at.line.Source.Id)))
            .OrderByDescending(at => at.line.Mass.Grams * ShareOf(at.component))
            .FirstOrDefault();
        if (salt is null || more is not { } grams || basis <= Mass.Zero || Math.Abs(grams / basis.Grams * 100) < WorthHolding)
        {
            return edits;
        }

        var wanted = salt.Mass.Grams - (grams / ShareOf(where) / (salt.Composition.Salt!.Value / 100));
        var (low, high) = (Correctors.Least * salt.Mass.Grams, Correctors.Most * salt.Mass.Grams);
        var edited = new LineEdit(salt.Source.Id, ScaleStep.Within(Mass.FromGrams(Math.Clamp(wanted, low, high)), low, high, formula.Recipe.Home.Scale), null);
        return edits.Any(edit => edit.Component.Id == where.Id)
            ? [.. edits.Select(edit => edit.Component.Id == where.Id ? edit with { Lines = [.. edit.Lines, edited] } : edit)]
            : [.. edits, new(where, [edited], Mass.Zero)];
    }

    /// <summary>Grams of salt that a part holds more; null when it is not known.</summary>
    private static double? More(PartEdit edit)
    {
        double? more = 0;
        foreach (var change in edit.Lines)
        {
            var before = edit.Component.Lines.First(line => line.Source.Id == change.Line);
            var after = change.Swap is { By: { } by } ? by.Composition : before.Composition;
            more += ((change.Mass.Grams * after.Salt) - (before.Mass.Grams * before.Composition.Salt)) / 100;
        }

        return more;
    }
}

using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>How warm each line goes into its bowl.</summary>
internal sealed class GoesIn(Figures figures)
{
    private readonly Dictionary<(string Component, string Line), HeatShare> here = Shares(figures.Here);
    private readonly Dictionary<(string Component, string Line), HeatShare> home = Shares(figures.Home);

    /// <summary>
    /// The temperature of a row in the bowl of the final dough, whose column it stands beside, and of what goes into no final dough in the bowl of its part; where it
    /// stands in the JSON if it does, and whether it is solved for. Nothing when parts of the row go in otherwise.
    /// </summary>
    public (Temperature? Warmth, string? Of, bool IsFree) Of(IReadOnlyList<(ComponentFormula Component, LineFormula Line)> all)
    {
        var lines = Last(all);
        if (!GoInAlike(lines, here, Boiling))
        {
            return (null, null, false);
        }

        var share = Share(lines, here);
        var free = share is { IsFree: true };
        var solved = free && figures.Here.Solutions is [{ Warmth: { } warmth }, ..] && share!.GoesIn is { } at && Math.Abs(at.Celsius - warmth.Likely.Celsius) < 1e-9;
        return share?.GoesIn is { } known ? (known, solved ? "solve.0.celsius" : null, free)
            : Boils(lines) ? (Boiling, figures.State.Setting.Read.Request.Pour is null ? "kitchen.boilsCelsius" : null, false)
            : (null, null, false);
    }

    /// <summary>How warm the rest of a row goes into parts that are mixed before the dough, where that is otherwise; in degrees, each once.</summary>
    public IReadOnlyList<string> Before(IReadOnlyList<(ComponentFormula Component, LineFormula Line)> all)
    {
        var dough = Told(Last(all), here, Boiling).ToArray();
        return dough.Length == 0 ? [] : [.. Told(all, here, Boiling).Except(dough)];
    }

    /// <summary>Whether a part of a row goes in as ice.</summary>
    public bool HasIce(IReadOnlyList<(ComponentFormula Component, LineFormula Line)> lines) =>
        figures.Here.Solutions is [{ Ice: not null, Lines: var iced }, ..] && lines.Any(at => at.Component.Kind == ComponentKind.Dough && iced.Contains(at.Line.Id));

    public Temperature? AtHome(IReadOnlyList<(ComponentFormula Component, LineFormula Line)> lines) =>
        GoInAlike(Last(lines), home, figures.Home.Boils) ? Share(Last(lines), home)?.GoesIn ?? (Boils(Last(lines)) ? figures.Home.Boils : null) : null;

    private static IReadOnlyList<(ComponentFormula Component, LineFormula Line)> Last(IReadOnlyList<(ComponentFormula Component, LineFormula Line)> lines) =>
        lines.Any(at => at.Component.Kind == ComponentKind.Dough) ? [.. lines.Where(at => at.Component.Kind == ComponentKind.Dough)] : lines;

    /// <summary>How warm boiling water and milk are poured.</summary>
    private Temperature Boiling => figures.State.Setting.Read.Request.Pour ?? figures.Here.Boils;

    /// <summary>Whether one temperature holds for all of a row, as far as it is told.</summary>
    private bool GoInAlike(IReadOnlyList<(ComponentFormula Component, LineFormula Line)> lines, Dictionary<(string Component, string Line), HeatShare> shares, Temperature boiling) =>
        Told(lines, shares, boiling).Count() < 2
            && FormulaRows.Entries(lines).Select(at => shares.GetValueOrDefault((at.Component.Id, at.Line.Id)) is { IsFree: true }).Distinct().Count() < 2;

    /// <summary>Every temperature that is told of a row, once.</summary>
    private IEnumerable<string> Told(IReadOnlyList<(ComponentFormula Component, LineFormula Line)> lines, Dictionary<(string Component, string Line), HeatShare> shares, Temperature boiling) =>
        FormulaRows.Entries(lines)
            .Select(at => shares.GetValueOrDefault((at.Component.Id, at.Line.Id))?.GoesIn ?? (at.Line.Source.Warmth.Kind == WarmthKind.Boiling ? boiling : (Temperature?)null))
            .OfType<Temperature>().Select(warmth => figures.Voice.Degrees(warmth, asked: true)).Distinct();

    /// <summary>That of the last bowl it goes into: the final dough's before a part's.</summary>
    private static HeatShare? Share(IReadOnlyList<(ComponentFormula Component, LineFormula Line)> lines, Dictionary<(string Component, string Line), HeatShare> shares) => lines
        .OrderByDescending(at => at.Component.Kind == ComponentKind.Dough)
        .Select(at => shares.GetValueOrDefault((at.Component.Id, at.Line.Id)))
        .FirstOrDefault(share => share is not null);

    private static bool Boils(IReadOnlyList<(ComponentFormula Component, LineFormula Line)> lines) =>
        lines.Any(at => at.Line.Source.Warmth.Kind == WarmthKind.Boiling);

    private static Dictionary<(string, string), HeatShare> Shares(Rehearsal rehearsal)
    {
        var shares = new Dictionary<(string, string), HeatShare>();
        foreach (var step in rehearsal.Steps.Where(step => step.Kind == StepKind.Mix))
        {
            foreach (var share in rehearsal.HeatOf(step.Id)?.Shares ?? [])
            {
                if (share is { Line: { } line, Giver: not HeatGiver.Ice })
                {
                    shares[(step.Component, line)] = share;
                }
            }
        }

        return shares;
    }
}

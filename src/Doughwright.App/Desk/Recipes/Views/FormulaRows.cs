using Doughwright.App.Text;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>A group of columns: the total, or one part.</summary>
/// <param name="Component">Null for the total.</param>
/// <param name="Amounts">By key of the row.</param>
internal sealed record FormulaGroup(ComponentFormula? Component, IReadOnlyDictionary<string, FormulaAmount> Amounts);

/// <summary>How much of a row is in a group.</summary>
/// <param name="Of">Where the one line that it is stands in the JSON; null when several lines were added up.</param>
/// <param name="PercentName">What its percentage is called there.</param>
internal sealed record FormulaAmount(double Grams, double? Percent, string? Of, string PercentName)
{
    /// <summary>What was typed in another measure than that of the table, of one line alone; null for sums.</summary>
    public string? Typed { get; init; }

    /// <summary>False where a line of it cannot be weighed: the grams are those of the others.</summary>
    public bool IsKnown { get; init; } = true;
}

/// <summary>
/// The rows of a formula: every ingredient of the dough once, and every part that is made of several. A part of a single ingredient is that
/// ingredient's row and needs no column of its own.
/// </summary>
internal sealed class FormulaRows
{
    private readonly Formula formula;
    private readonly Voice voice;
    private readonly ComponentFormula[] inside;
    private readonly Dictionary<string, List<(ComponentFormula Component, LineFormula Line)>> lines = [];
    private readonly List<string> order = [];

    private FormulaRows(Formula formula, Voice voice)
    {
        (this.formula, this.voice) = (formula, voice);
        inside = [.. formula.Components.Where(component => component.ShareInDough > 0)];
        foreach (var root in inside.Where(component => component.Kind == ComponentKind.Dough).Reverse().Concat(inside))
        {
            Walk(root, []);
        }

        Groups = [Total(), .. inside.Where(component => !IsSingle(component)).OrderBy(component => component.Kind == ComponentKind.Dough).Select(Own)];
    }

    /// <summary>In the order in which they go in, what a part is made of before it.</summary>
    public IReadOnlyList<string> Keys => order;

    public IReadOnlyList<FormulaGroup> Groups { get; }

    public static FormulaRows Of(Formula formula, Voice voice) => new(formula, voice);

    public IReadOnlyList<(ComponentFormula Component, LineFormula Line)> LinesOf(string key) => lines[key];

    /// <summary>"Potato, boiled, peeled and mashed".</summary>
    public string NameOf(string key)
    {
        Line[] own = [.. lines[key].Select(at => at.Line.Source).Where(line => line.Uses is null)];
        var line = lines[key].Select(at => at.Line).FirstOrDefault(line => line.Source.Uses is null) ?? lines[key][0].Line;
        // What is true of one line only is not said of all that the row adds up.
        var shared = line.Source.Conditions.Where(condition => own.All(other => other.Is(condition)));
        var boils = own.Length > 0 && own.All(other => other.Warmth.Kind == WarmthKind.Boiling);
        string[] conditions = [.. shared, .. boils ? [voice.Words["recipe.boiling"]] : Array.Empty<string>()];
        var name = Capital.Of(line.Name);
        return conditions.Length == 0 ? name : voice.Say("recipe.line-is", ("name", name), ("conditions", conditions));
    }

    /// <summary>The lines by which a row goes into its bowls: what a part of the row is made of goes in with that part.</summary>
    public static IEnumerable<(ComponentFormula Component, LineFormula Line)> Entries(IReadOnlyList<(ComponentFormula Component, LineFormula Line)> row) =>
        row.Where(at => !row.Any(other => other.Line.UsesComponent == at.Component.Id));

    private void Walk(ComponentFormula component, HashSet<string> within)
    {
        foreach (var line in component.Lines)
        {
            if (UsedBy(line) is { } part && within.Add(part.Id))
            {
                Walk(part, within);
                within.Remove(part.Id);
            }

            var key = KeyOf(line);
            var all = lines.TryGetValue(key, out var known) ? known : lines[key] = [];
            if (all.Count == 0)
            {
                order.Add(key);
            }

            if (!all.Exists(at => ReferenceEquals(at.Line, line)))
            {
                all.Add((component, line));
            }
        }
    }

    private ComponentFormula? UsedBy(LineFormula line) => line.UsesComponent is { } id ? Array.Find(inside, component => component.Id == id) : null;

    private static bool IsSingle(ComponentFormula component) => component is { Kind: not ComponentKind.Dough, Lines: [{ Source.Uses: null }] };

    private string KeyOf(LineFormula line) => UsedBy(line) is { } part
        ? IsSingle(part) ? KeyOf(part.Lines[0]) : "part " + part.Id
        : line.Source.Uses is { } gone ? "part " + gone : "line " + line.Kind;

    private FormulaGroup Total()
    {
        var amounts = new Dictionary<string, FormulaAmount>();
        foreach (var (key, all) in lines)
        {
            var own = all.Where(at => at.Line.Source.Uses is null && inside.Contains(at.Component)).ToArray();
            if (own.Length > 0)
            {
                var grams = own.Sum(at => at.Line.Mass.Grams * at.Component.ShareInDough);
                var of = own is [{ Component.ShareInDough: 1 } only] && IsAlone(only.Component, only.Line) ? PathOf(only.Component, only.Line) : null;
                amounts[key] = new(grams, formula.Flour > Mass.Zero ? 100 * grams / formula.Flour.Grams : null, of, "overallPercent") { IsKnown = own.All(at => at.Line.IsMassKnown) };
            }
        }

        return new(null, amounts);
    }

    private FormulaGroup Own(ComponentFormula component)
    {
        var amounts = new Dictionary<string, FormulaAmount>();
        foreach (var line in component.Lines)
        {
            var key = KeyOf(line);
            amounts[key] = amounts.TryGetValue(key, out var before)
                ? new(before.Grams + line.Mass.Grams, before.Percent + OnOwn(line), null, "percent") { IsKnown = before.IsKnown && line.IsMassKnown }
                : new(line.Mass.Grams, OnOwn(line), IsAlone(component, line) ? PathOf(component, line) : null, "percent")
                {
                    Typed = TypedMeasure.Of(line, voice.Measures),
                    IsKnown = line.IsMassKnown,
                };
        }

        return new(component, amounts);
    }

    /// <summary>What cannot be weighed adds nothing, and leaves the column its sum.</summary>
    private static double? OnOwn(LineFormula line) => line.IsMassKnown ? line.Percent?.Value : 0;

    /// <summary>Whether its id means one line only.</summary>
    private static bool IsAlone(ComponentFormula component, LineFormula line) => component.Lines.Count(other => other.Id == line.Id) == 1;

    private static string PathOf(ComponentFormula component, LineFormula line) => $"formula.components.{component.Id}.lines.{line.Id}";
}

using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>Lays the formula out. What is printed in a column adds up to its last row.</summary>
internal sealed class FormulaMaker
{
    private readonly Figures figures;
    private readonly Formula formula;
    private readonly GoesIn goesIn;
    private readonly FormulaRows rows;

    private FormulaMaker(Figures figures)
    {
        (this.figures, formula) = (figures, figures.Here.Formula);
        goesIn = new(figures);
        rows = FormulaRows.Of(formula, figures.Voice);
    }

    /// <summary>Null when there is no dough.</summary>
    public static FormulaView? Of(Figures figures) => figures.Here.Formula.Dough > Mass.Zero ? new FormulaMaker(figures).Make() : null;

    private FormulaView Make()
    {
        var voice = figures.Voice;
        var columns = rows.Groups.Select(Column).ToArray();
        var doughs = rows.Groups.Count(group => group.Component?.Kind == ComponentKind.Dough);
        var heads = rows.Groups.Select(group => group.Component is not { } component ? voice.Words["head.total-formula"]
            : component.Kind == ComponentKind.Dough && doughs == 1 ? voice.Words["recipe.final-dough"]
            : Capital.Of(component.Name));
        return new(
            [.. heads],
            voice.Words[voice.Measures == MeasureSystem.Us ? "recipe.weight" : "head.grams"],
            voice.DegreeUnit.Trim('\u00a0'),
            [.. rows.Keys.Select(key => Line(key, columns))],
            new(voice.Words["recipe.total"], [.. columns.Select(column => column.Total)], DoughWarmth(), null, false),
            Told.Join(Note(), " "));
    }

    private FormulaLine Line(string key, (Dictionary<string, FormulaCell> Cells, FormulaCell Total)[] columns)
    {
        var (warmth, of, free) = goesIn.Of(rows.LinesOf(key));
        var home = goesIn.AtHome(rows.LinesOf(key));
        var degrees = warmth is { } at ? figures.Degrees(at, of, home, asked: true) : null;
        if (degrees is not null && goesIn.HasIce(rows.LinesOf(key)))
        {
            degrees = degrees with { Text = figures.Voice.Say("recipe.goes-in-ice", ("water", degrees.Text)) };
        }

        if (degrees is not null && goesIn.Before(rows.LinesOf(key)) is { Count: > 0 } before)
        {
            degrees = degrees with { Text = figures.Voice.Say("recipe.goes-in-before", ("dough", degrees.Text), ("before", string.Join(figures.Voice.Words["list-comma"], before))) };
        }

        return new(
            rows.NameOf(key),
            [.. columns.Select(column => column.Cells.GetValueOrDefault(key))],
            degrees,
            warmth is { } coloured ? Warmth.Class(coloured) : null,
            free);
    }

    private Fig? DoughWarmth() => figures.Dough is { Mixed: { } mixed } dough
        ? figures.Degrees(mixed.Likely, $"components.{dough.Id}.mixedCelsius", figures.Home.Components.FirstOrDefault(component => component.Id == dough.Id)?.Mixed?.Likely)
        : null;

    private (Dictionary<string, FormulaCell> Cells, FormulaCell Total) Column(FormulaGroup group)
    {
        var keys = rows.Keys.Where(group.Amounts.ContainsKey).ToArray();
        var amounts = keys.Select(key => group.Amounts[key]).ToArray();
        var (weights, weightTotal) = Weights(amounts);
        var (percents, percentTotal) = Percents(amounts);
        var cells = keys.Select((key, i) => (key, amounts[i].IsKnown ? Cell(amounts[i], weights[i], percents?[i]) : Unknown())).ToDictionary();
        var total = group.Component is { } component ? $"formula.components.{component.Id}.grams" : "formula.doughGrams";
        var sum = group.Component?.Mass.Grams ?? formula.Dough.Grams;
        return (cells, new(new(weightTotal, sum, total), percents is null ? null : new Fig(percentTotal)));
    }

    private FormulaCell Unknown() => new(new Fig(figures.Voice.Words["not-known"]), null);

    private static FormulaCell Cell(FormulaAmount amount, string weight, string? percent) => new(
        amount.Of is { } line ? new Fig(weight, amount.Grams, line + ".grams") : new Fig(weight),
        percent is null ? null : amount.Of is { } of ? new Fig(percent, amount.Percent, $"{of}.{amount.PercentName}") : new Fig(percent))
    {
        Typed = amount.Typed,
    };

    private (string[] Cells, string Total) Weights(FormulaAmount[] amounts)
    {
        var grams = amounts.Select(amount => amount.Grams).ToArray();
        if (figures.Voice.Measures == MeasureSystem.Us || grams.Any(value => value < 0))
        {
            return ([.. grams.Select(value => Show.Mass(Mass.FromGrams(value), figures.Voice.Measures))], Show.Mass(Mass.FromGrams(grams.Sum()), figures.Voice.Measures));
        }

        // Whole grams unless a small one needs its decimal; then the sum has one too.
        var decimals = grams.Any(value => value < 10 && Math.Abs(value - Math.Round(value)) >= 0.05) ? 1 : 0;
        var shares = Show.ShareOut(grams, decimals);
        return ([.. shares.Select(share => Show.Number(share, decimals))], Show.Number(shares.Sum(), decimals));
    }

    private static (string[]? Cells, string Total) Percents(FormulaAmount[] amounts)
    {
        if (amounts.Any(amount => amount.Percent is null or < 0))
        {
            return (null, "");
        }

        var shares = Show.ShareOut([.. amounts.Select(amount => amount.Percent!.Value)], 1);
        return ([.. shares.Select(share => share == 0 ? FigureTable.Nothing : Show.Number(share, 1))], Show.Number(shares.Sum(), 1));
    }

    private IEnumerable<Told> Note()
    {
        var voice = figures.Voice;
        var percent = formula.Percent;
        yield return Share("hydration", percent.Hydration, "hydration");
        yield return Share("all-water", percent.TrueWater, "trueWater");
        if (percent.ScaldedFlour is not { Value: 0 })
        {
            yield return Share("scalded", percent.ScaldedFlour, "scaldedFlour");
        }

        if (percent.PrefermentedFlour is not { Value: 0 })
        {
            yield return Share("prefermented", percent.PrefermentedFlour, "prefermentedFlour");
        }

        if (rows.Keys.Any(key => goesIn.Of(rows.LinesOf(key)).Warmth is not null && goesIn.Before(rows.LinesOf(key)).Count > 0))
        {
            yield return Told.Of(voice.Words["recipe.goes-in-before-note"]);
        }

        if (formula.Unweighed is { Count: > 0 } unknown)
        {
            yield return Told.Say(voice, "formula-without", ("names", voice.List([.. unknown])));
        }

        if (formula.Yeast is { Fresh.Grams: > 0 } yeast)
        {
            yield return Told.Say(
                voice,
                "yeast",
                ("fresh", figures.Weight(yeast.Fresh, "formula.yeast.freshGrams")),
                ("dry", figures.Weight(yeast.ActiveDry, "formula.yeast.activeDryGrams")),
                ("instant", figures.Weight(yeast.Instant, "formula.yeast.instantGrams")));
        }

        Told Share(string key, Percent? value, string name) => Told.Say(
            voice,
            $"recipe.percent.{key}",
            ("percent", value is { } known ? new Fig(Show.Percent(known), known.Value, $"formula.percent.{name}") { Strong = true } : new Piece.Unknown(voice.Words["not-known"])));
    }
}

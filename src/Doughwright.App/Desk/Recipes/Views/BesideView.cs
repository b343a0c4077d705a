using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>A small table beside the formula.</summary>
/// <param name="Of">What the percentages are of; stands over the names.</param>
public sealed record SmallTable(string Head, string Of, string Unit, IReadOnlyList<SmallRow> Rows, SmallRow? Total, string Note);

/// <summary>One row: null is nothing, and not known is said in the name of the cell.</summary>
public sealed record SmallRow(string Name, Told Weight, Told Percent);

/// <summary>What stands beside the formula: where the water is, what cooking takes, what is not dough, and what people may be allergic to.</summary>
public sealed record BesideView(IReadOnlyList<SmallTable> Tables, IReadOnlyList<string> Contains)
{
    internal static BesideView Of(Figures figures)
    {
        var maker = new BesideMaker(figures);
        return new([.. maker.Tables()], [.. figures.State.Findings.Where(finding => finding.Kind is "allergens" or "allergens-by-label" or "allergens-not-known")
            .Select(finding => FindingWords.Message(finding, figures.Voice))]);
    }
}

/// <summary>Makes the small tables.</summary>
internal sealed class BesideMaker(Figures figures)
{
    private readonly Voice voice = figures.Voice;
    private readonly Formula formula = figures.Here.Formula;

    private string Unit => voice.Words[voice.Measures == MeasureSystem.Us ? "recipe.weight" : "head.grams"];

    public IEnumerable<SmallTable> Tables()
    {
        if (formula.Water.Shares.Count > 0)
        {
            yield return Water();
        }

        for (var index = 0; index < formula.Buy.Count; index++)
        {
            if (formula.Buy[index].Steps.Count > 0)
            {
                yield return Bought(formula.Buy[index], index);
            }
        }

        foreach (var component in formula.Components.Where(component => component is { ShareInDough: 0, Lines.Count: > 0 }))
        {
            yield return Outside(component);
        }
    }

    private SmallTable Water()
    {
        var water = formula.Water;
        var flour = formula.Flour.Grams;
        var known = Enumerable.Range(0, water.Shares.Count).Where(index => water.Shares[index].Mass is not null).ToArray();
        var grams = Shared([.. known.Select(index => water.Shares[index].Mass!.Value.Grams)]);
        var percents = flour > 0 ? Show.ShareOut([.. known.Select(index => 100 * water.Shares[index].Mass!.Value.Grams / flour)], 1) : null;
        var masses = known.Select(index => water.Shares[index].Mass!.Value.Grams).ToArray();
        // The same lines in every measure: those of which a gram's tenth is printed.
        var tenths = masses.Any(mass => mass < 0) ? null : Show.ShareOut(masses, 1);
        var rows = new List<SmallRow>();
        for (var index = 0; index < water.Shares.Count; index++)
        {
            var share = water.Shares[index];
            var at = Array.IndexOf(known, index);
            if (share.Mass is { } little && (Show.Number(little.Grams, 1) == Show.Number(0, 1) || tenths?[at] == 0))
            {
                continue;
            }

            var name = formula.FindComponent(share.Component) is { Kind: not ComponentKind.Dough, Lines.Count: > 1 } part ? voice.Say("recipe.of-part", ("part", Capital.Of(part.Name)), ("name", share.Name)) : Capital.Of(share.Name);
            rows.Add(at < 0
                ? new(name, Unknown(), Told.Nothing)
                : new(name, Told.Of(new Fig(grams[at], share.Mass!.Value.Grams, $"formula.water.from.{index}.grams")), percents is null ? Told.Nothing : Told.Of(percents[at] == 0 ? FigureTable.Nothing : Show.Number(percents[at], 1))));
        }

        var sum = known.Sum(index => water.Shares[index].Mass!.Value.Grams);
        var total = new SmallRow(
            voice.Words[water.Total is null ? "at-least" : "recipe.all-water"],
            Told.Of(new Fig(Total(grams, sum), water.AtLeast.Grams, "formula.water.atLeastGrams")),
            formula.Percent.TrueWater is { } all ? Told.Of(new Fig(Show.Number(all.Value, 1), all.Value, "formula.percent.trueWater")) : Told.Nothing);
        return new(voice.Words["recipe.water"], voice.Words["recipe.of-flour"], Unit, rows, total, "");
    }

    /// <summary>From the shop to what goes in.</summary>
    private SmallTable Bought(BuyItem item, int index)
    {
        var rows = new List<SmallRow> { Row(voice.Words["recipe.as-bought"], item.ToBuy, $"formula.buy.{index}.grams", item.ToBuy) };
        var mass = item.ToBuy;
        foreach (var step in item.Steps.SkipLast(1))
        {
            mass = mass is { } before && step.Factor is { } factor ? before * factor : null;
            rows.Add(Row(StepWord(step), mass, null, item.ToBuy));
        }

        var last = Row(StepWord(item.Steps[^1]), item.Used, $"formula.buy.{index}.preparedGrams", item.ToBuy);
        var pieces = item.Pieces is { } count ? voice.Say("buy.pieces", ("pieces", Show.Number(count, count == Math.Floor(count) ? 0 : 1))) : voice.Words["recipe.stage"];
        var weighed = item.Steps.Any(step => step.Weighed) ? "recipe.as-weighed" : item.ToBuy is null ? "recipe.weigh-it" : "recipe.by-table";
        return new(voice.Say("recipe.from-shop", ("name", Capital.Of(item.Name))), pieces, Unit, rows, last, voice.Words[weighed]);
    }

    private string StepWord(BuyStep step) => voice.Words[step.Step switch
    {
        PreparationStep.Peel => "recipe.peeled",
        PreparationStep.Trim => "recipe.trimmed",
        _ => "recipe.cooked",
    }];

    private SmallTable Outside(ComponentFormula component)
    {
        var grams = Shared([.. component.Lines.Select(line => line.Mass.Grams)]);
        var rows = component.Lines.Select((line, i) => new SmallRow(
            Capital.Of(line.Name),
            Told.Of(new Fig(grams[i], line.Mass.Grams, Alone(component, line) ? $"formula.components.{component.Id}.lines.{line.Id}.grams" : null)),
            line.Percent is { } percent ? Told.Of(new Fig(Show.Number(percent.Value, 1), percent.Value, Alone(component, line) ? $"formula.components.{component.Id}.lines.{line.Id}.percent" : null)) : Told.Nothing));
        var each = formula.Recipe.Make is { } make ? voice.Say("recipe.for-each", ("mass", component.Mass / make.Pieces)) : voice.Words["head.ingredient"];
        return new(
            Capital.Of(component.Name),
            each,
            Unit,
            [.. rows],
            component.Lines.Count < 2 ? null : new(voice.Words["together"], Told.Of(new Fig(Total(grams, component.Mass.Grams), component.Mass.Grams, $"formula.components.{component.Id}.grams")), Told.Nothing),
            "");
    }

    private static bool Alone(ComponentFormula component, LineFormula line) => component.Lines.Count(other => other.Id == line.Id) == 1;

    private SmallRow Row(string name, Mass? mass, string? of, Mass? whole) => new(
        name,
        mass is { } known ? Told.Of(new Fig(Plain(known.Grams), known.Grams, of)) : Unknown(),
        mass is { } part && whole is { Grams: > 0 } all ? Told.Of(Show.Number(100 * (part / all), 1)) : Told.Nothing);

    private Told Unknown() => new([new Piece.Unknown(voice.Words["not-known"])]);

    private string[] Shared(double[] grams) => voice.Measures == MeasureSystem.Us || grams.Any(value => value < 0)
        ? [.. grams.Select(Plain)]
        : [.. Show.ShareOut(grams, 1).Select(share => Show.Number(share, 1))];

    private string Total(string[] shown, double sum) => voice.Measures == MeasureSystem.Us || shown.Length == 0 ? Plain(sum) : Show.Number(Show.ShareOut([sum], 1)[0], 1);

    /// <summary>Without unit where the head of the column names it.</summary>
    private string Plain(double grams) => voice.Grams(Mass.FromGrams(grams));
}

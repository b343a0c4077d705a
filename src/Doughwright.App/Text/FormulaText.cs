using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>A formula on a page: the tables, the dough on its flour, its water, its yeast, what to buy.</summary>
internal sealed class FormulaText
{
    /// <summary>Of the flour. As much as a swap lets be unknown.</summary>
    private const double WidestBounds = 0.02;

    private readonly Formula formula;
    private readonly Voice voice;
    private readonly Page page = new();

    private FormulaText(Formula formula, Voice voice) => (this.formula, this.voice) = (formula, voice);

    public static string Write(Formula formula, Judgement findings, Voice voice)
    {
        var text = new FormulaText(formula, voice);
        text.WriteHead();
        new FormulaTables(formula, voice).WriteTo(text.page);
        text.WritePercents();
        text.WriteWater();
        text.WriteYeast();
        text.WriteBuy();
        FindingsText.WriteSection(text.page, findings, voice);
        return text.page.ToString();
    }

    private void WriteHead()
    {
        page.Paragraph(formula.Recipe.Title);
        page.Paragraph(formula.Recipe.Make is { } make
            ? voice.Say("formula-makes", ("dough", formula.Dough), ("flour", formula.Flour), ("pieces", make.Pieces), ("what", make.What), ("piece", make.PieceMass))
            : voice.Say("formula-dough", ("dough", formula.Dough), ("flour", formula.Flour)));
        if (formula.Unweighed is { Count: > 0 } unknown)
        {
            page.Paragraph(voice.Say("formula-without", ("names", voice.List(unknown))));
        }
    }

    private void WritePercents()
    {
        var percent = formula.Percent;
        page.Heading(voice.Words["percent-head"]);
        var table = new Table(new("", Align.Left), new("", Align.Right));
        Row("hydration", percent.Hydration, always: true);
        All("true-water", percent.TrueWater, formula.Water);
        Row("salt", percent.Salt, always: true);
        Row("sugar", percent.Sugar);
        All("true-sugar", percent.TrueSugar, formula.Sugar);
        Row("fat", percent.Fat);
        All("true-fat", percent.TrueFat, formula.Fat);
        Row("fresh-yeast", percent.FreshYeast);
        Row("scalded-flour", percent.ScaldedFlour);
        Row("prefermented-flour", percent.PrefermentedFlour);
        table.WriteTo(page);

        void All(string name, Percent? value, Budget budget)
        {
            if (value is null && Bounds(budget) is { } bounds)
            {
                table.Add(voice.Words[$"percent.{name}"], bounds);
                return;
            }

            Row(name, value, always: name == "true-water");
        }

        void Row(string name, Percent? value, bool always = false)
        {
            if (always || value is not { Value: 0 })
            {
                table.Add(voice.Words[$"percent.{name}"], value is { } known ? Show.Percent(known) : voice.Words["not-known"]);
            }
        }
    }

    /// <summary>Where little of the dough is unknown, the two ends between which the figure lies; null where they are too far apart to be of use.</summary>
    private string? Bounds(Budget budget)
    {
        if (!(formula.Flour > Mass.Zero) || budget.AtMost is not { } most || most - budget.AtLeast > formula.Flour * WidestBounds)
        {
            return null;
        }

        var (low, high) = (Percent.Of(budget.AtLeast, formula.Flour), Percent.Of(most, formula.Flour));
        return Show.Percent(low) == Show.Percent(high) ? Show.Percent(high)
            : budget.AtLeast > Mass.Zero ? voice.Say("percent-between", ("low", Show.Number(low.Value, 1)), ("high", Show.Percent(high)))
            : voice.Say("percent-at-most", ("high", Show.Percent(high)));
    }

    private void WriteWater()
    {
        var water = formula.Water;
        page.Heading(voice.Words[water.Total is null ? "water-head-at-least" : "water-head"]);
        var known = water.Shares.Where(share => share.Mass is not null).ToArray();
        var grams = Show.ShareOut([.. known.Select(share => share.Mass!.Value.Grams)], 1);
        var table = new Table(new(voice.Words["head.ingredient"], Align.Left), new(voice.Words["head.part"], Align.Left), new(voice.Words["head.grams"], Align.Right));
        foreach (var (share, shown) in known.Zip(grams).Where(pair => pair.Second > 0))
        {
            table.Add(share.Name, PartName(share.Component), Show.Number(shown, 1));
        }

        foreach (var unknown in water.Shares.Where(share => share.Mass is null))
        {
            table.Add(unknown.Name, PartName(unknown.Component), voice.Words["not-known"]);
        }

        table.AddTotal(voice.Words[water.Total is null ? "at-least" : "together"], "", Show.Number(grams.Sum(), 1));
        table.WriteTo(page);
    }

    private string PartName(string component) => formula.FindComponent(component)?.Name ?? component;

    private void WriteYeast()
    {
        if (formula.Yeast is { Fresh.Grams: > 0 } yeast)
        {
            page.Heading(voice.Say("yeast", ("fresh", yeast.Fresh), ("dry", yeast.ActiveDry), ("instant", yeast.Instant)));
        }
    }

    private void WriteBuy()
    {
        page.Heading(voice.Words["buy-head"]);
        var table = new Table(new(voice.Words["head.ingredient"], Align.Left), new(voice.Words["head.buy"], Align.Right), new("", Align.Left));
        foreach (var item in formula.Buy)
        {
            table.Add(item.Name, item.ToBuy is { } mass ? Show.Mass(mass, voice.Measures) : voice.Words["not-known"], BuyWords.Note(item, voice));
        }

        table.WriteTo(page);
    }
}

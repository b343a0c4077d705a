using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pages.Measures;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pages.Making;

/// <summary>What goes in, part by part, in the order in which the parts are written.</summary>
internal sealed class PartsMaker(Rehearsal here, Both both)
{
    public IReadOnlyList<PagePart> All() => [.. here.Formula.Components.Select(Part)];

    private PagePart Part(ComponentFormula part) => new(Capital.Of(part.Name), Note(part), [.. part.Lines.Select(line => Line(part, line))]);

    private PageLine Line(ComponentFormula part, LineFormula line)
    {
        var words = both.Voice.Words;
        return new(
            Capital.Of(NameOf(part, line)),
            LineMeasures.In(both.Order[0], line, here.Formula.Larder, words),
            LineMeasures.In(both.Order[1], line, here.Formula.Larder, words),
            LineMeasures.In(MeasureSystem.Metric, line, here.Formula.Larder, words),
            line.UsesComponent is not null);
    }

    /// <summary>"Water, boiling", "milk, at 20 °C (68 °F)", "potato, boiled, peeled, mashed".</summary>
    private string NameOf(ComponentFormula part, LineFormula line)
    {
        var name = line.UsesComponent is { } used && here.Formula.FindComponent(used) is { } made ? made.Name : line.Name;
        var said = line.Source.Conditions.Concat(Warmth(part, line)).ToArray();
        return said.Length == 0 ? name : both.Say("page.line-is", ("name", name), ("conditions", string.Join(both.Voice.Words["list-comma"], said)));
    }

    private IEnumerable<string> Warmth(ComponentFormula part, LineFormula line)
    {
        if (part.Kind == ComponentKind.Dough && here.Solutions.FirstOrDefault() is { } solved && solved.Lines.Contains(line.Id))
        {
            if (solved.Warmth is { } warmth)
            {
                yield return both.Say("page.goes-in-at", ("temperature", both.Degrees(warmth.Likely)));
            }
            else if (solved.Ice is { } ice)
            {
                yield return both.Say("page.goes-in-as-ice", ("ice", both.Weight(ice.Likely)));
            }

            yield break;
        }

        switch (line.Source.Warmth)
        {
            case { Kind: WarmthKind.Boiling }:
                yield return both.Say("page.boiling");
                break;
            case { Kind: WarmthKind.Fridge }:
                yield return both.Say("page.from-fridge");
                break;
            case { Kind: WarmthKind.Tap }:
                yield return both.Say("page.from-tap");
                break;
            case { Kind: WarmthKind.Stated, Stated: { } stated }:
                yield return both.Say("page.goes-in-at", ("temperature", both.Degrees(stated)));
                break;
        }
    }

    /// <summary>What to buy for what is peeled or cooked first, as far as only this part needs it.</summary>
    private string? Note(ComponentFormula part)
    {
        var bought = part.Lines
            .Select(line => (Line: line, Item: here.Formula.Buy.FirstOrDefault(item => item.Ingredient is not null && item.Ingredient.Id == line.Ingredient?.Id)))
            .Where(each => each.Item is { Steps.Count: > 0, ToBuy: not null } item && Math.Abs(item.Used.Grams - each.Line.Mass.Grams) < 1e-9)
            .Select(each => both.Say("page.as-bought", ("name", Capital.Small(each.Line.Name)), ("weight", both.Weight(each.Item!.ToBuy!.Value))))
            .ToArray();
        return bought.Length == 0 ? null : both.Say("page.buy", ("what", bought));
    }
}

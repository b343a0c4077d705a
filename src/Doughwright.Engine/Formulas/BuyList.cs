using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas;

/// <summary>Goes back from what is used to what is bought: cooked, peeled, as bought.</summary>
internal sealed class BuyList(Larder larder, Report report)
{
    private const string Egg = "egg-whole";
    private const string Yolk = "egg-yolk";
    private const string White = "egg-white";

    private readonly Dictionary<string, BuyItem> items = new(StringComparer.Ordinal);
    private readonly List<string> order = [];

    public IReadOnlyList<BuyItem> Of(IReadOnlyList<Part> parts)
    {
        foreach (var part in parts)
        {
            // A line whose part is missing has neither row nor name of something one can buy.
            foreach (var line in part.Lines.Where(line => line.Source.Uses is null && line.Ingredient?.Id != "water"))
            {
                Add(part.Component, line);
            }
        }

        FromTheSameEggs();
        return [.. order.Select(key => items[key])];
    }

    private void Add(Component component, PartLine line)
    {
        var key = KindNames.Of(line.Ingredient, line.Source.Name);
        var steps = Steps(line);
        var toBuy = steps.Aggregate((Mass?)line.Mass, (mass, step) => step.Factor is { } factor ? mass / factor : null);
        steps.Reverse();
        if (toBuy is null)
        {
            report.About(component, line.Source, "cooking-change-not-known", Grade.Hint, ("name", line.Source.Name));
        }

        if (items.TryGetValue(key, out var item))
        {
            items[key] = item with
            {
                Used = item.Used + line.Mass,
                ToBuy = item.ToBuy + toBuy,
                Pieces = item.Pieces + Pieces(line),
                Steps = [.. item.Steps.Union(steps)],
            };
        }
        else
        {
            order.Add(key);
            items.Add(key, new(line.Source.Name, line.Ingredient, line.Mass, toBuy, Pieces(line), steps));
        }
    }

    /// <summary>A yolk in the dough and a white in the wash are one egg, not two; and eggs that are parted are bought with the whole ones.</summary>
    private void FromTheSameEggs()
    {
        if (items.TryGetValue(Egg, out var egg) && egg.Pieces is { } whole && (items.ContainsKey(Yolk) || items.ContainsKey(White)))
        {
            double PiecesOf(string part) => items.GetValueOrDefault(part)?.Pieces ?? 0;
            items[Egg] = egg with { Eggs = EggsToBuy.Of(whole, PiecesOf(Yolk), PiecesOf(White)) };
            foreach (var part in new[] { Yolk, White }.Where(items.ContainsKey))
            {
                items[part] = items[part] with { IsInEggs = true };
            }
        }

        if (items.TryGetValue(Yolk, out var yolk) && items.TryGetValue(White, out var white) && yolk.Pieces is { } yolks && white.Pieces is { } whites)
        {
            var eggs = Math.Max(yolks, whites);
            items[Yolk] = yolk with { TogetherFromEggs = eggs };
            items[White] = white with { TogetherFromEggs = eggs };
        }
    }

    private static double? Pieces(PartLine line) => line.Ingredient?.Piece is { } piece ? line.Mass / piece : null;

    /// <summary>The steps from used back to bought.</summary>
    private List<BuyStep> Steps(PartLine line)
    {
        var steps = new List<BuyStep>();
        var row = line.Ingredient;
        if (line.Source.Weighed is { } weighed && line.Raw is { } raw && weighed.RawPeeled > Mass.Zero && weighed.Cooked > Mass.Zero)
        {
            steps.Add(new(PreparationStep.Cook, weighed.Cooked / weighed.RawPeeled, true, null, ""));
            row = raw;
        }

        while (row is not null && larder.PreparationOf(row) is { } preparation)
        {
            steps.Add(new(preparation.Step, preparation.Factor, false, preparation.Source, preparation.Note));
            row = preparation.From is { } from ? larder.WithId(from) : null;
        }

        return steps;
    }
}

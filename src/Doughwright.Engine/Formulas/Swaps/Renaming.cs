using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>The lines of one part after its edits, and what became of their ids.</summary>
internal sealed class Renaming
{
    private const string WaterName = "water";

    private readonly Dictionary<string, string?> became = new(StringComparer.Ordinal);
    private readonly List<Line> lines = [];
    private readonly HashSet<string> standing = new(StringComparer.Ordinal);
    private readonly string? added;
    private readonly string? addedAfter;

    public Renaming(Component component, PartEdit edit)
    {
        foreach (var line in component.Lines)
        {
            var change = edit.Lines.FirstOrDefault(other => other.Line == line.Id);
            Put(line.Id, change is null ? line : New(line, change), standsIn: change?.Swap?.By is not null);
        }

        if (edit.Water > Mass.Zero)
        {
            // Beside what it stands in for; where that is gone, in its place.
            var last = edit.Lines.Last(change => change.Swap is not null).Line;
            var index = became[last] is { } id ? lines.FindIndex(line => line.Id == id) + 1 : component.Lines.TakeWhile(line => line.Id != last).Count(line => became[line.Id] is not null);
            (added, addedAfter) = (WaterName, last);
            lines.Insert(index, Water(edit.Water));
        }

        Base = component.Base is { } basis ? became.GetValueOrDefault(basis, basis) : null;
    }

    public IReadOnlyList<Line> Lines => lines;

    public string? Base { get; }

    public IReadOnlyList<string> Order(IReadOnlyList<string> order)
    {
        var now = new List<string>();
        foreach (var id in order)
        {
            string?[] ids = [became.GetValueOrDefault(id, id), id == addedAfter ? added : null];
            now.AddRange(ids.OfType<string>().Where(each => !now.Contains(each)));
        }

        return now;
    }

    private void Put(string was, Line? line, bool standsIn)
    {
        became[was] = line?.Id;
        if (line is null)
        {
            return;
        }

        // Where what stands in is there already, there is more of it and no second line. Before or behind makes no difference.
        if (standsIn)
        {
            standing.Add(line.Id);
        }

        if (standing.Contains(line.Id) && lines.FindIndex(other => other.Id == line.Id && other.Uses is null) is var index and >= 0)
        {
            lines[index] = Weighing(lines[index], lines[index].Mass!.Value + line.Mass!.Value);
        }
        else
        {
            lines.Add(line);
        }
    }

    private static Line? New(Line line, LineEdit edit)
    {
        switch (edit.Swap)
        {
            case { By: null }:
                return null;
            case { Manner: Manner.Same, By: { } same }:
                return line with { Id = Slug.Of(same.Name), Name = same.Name, Conditions = same.Conditions };
            case { By: { } by } swap:
                return Weighing(line, edit.Mass) with
                {
                    Id = Slug.Of(by.Name),
                    Name = by.Name,
                    Conditions = by.Conditions,
                    CountsAs = null,
                    Weighed = null,
                    // Oil stands on the shelf, wherever the butter was.
                    Warmth = line.Warmth.Kind == WarmthKind.Fridge && (swap.Line.Ingredient?.MeltsAsButter ?? false) && by.Ingredient is { MeltsAsButter: false }
                        ? LineWarmth.AsTheRoom
                        : line.Warmth,
                };
            default:
                return Weighing(line, edit.Mass);
        }
    }

    /// <summary>The line with another mass, told in plain grams.</summary>
    public static Line Weighing(Line line, Mass mass) =>
        line.Mass == mass ? line : line with { Mass = mass, Typed = $"{NumberText.Exact(mass.Grams)} g", Household = null };

    private static Line Water(Mass mass) => Weighing(new() { Id = WaterName, Name = WaterName, Typed = "", Position = Position.None }, mass);
}

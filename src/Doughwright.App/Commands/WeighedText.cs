using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.App.Commands;

/// <summary>Weighings as typed: "potato=200g:170g", raw and peeled before the colon, cooked behind it.</summary>
internal static class WeighedText
{
    private static readonly Limit<Mass> Weighable = new("weighed-outside-limits", Mass.FromGrams(1), Limits.Dough.High);

    public static Dictionary<string, Weighed> Read(Given given, Options options, Names names)
    {
        var weighed = new Dictionary<string, Weighed>();
        foreach (var (name, value) in given.Pairs(options.Weighed))
        {
            var option = options.Weighed.Name;
            var line = names.Line(option, name);
            var halves = value.Split(':', 2);
            if (halves.Length < 2)
            {
                given.Faults.Add("weighed-wanted", ("option", option), ("given", value), ("example", given.Example(options.Weighed)));
                continue;
            }

            var raw = given.Mass(option, halves[0], Weighable);
            var cooked = given.Mass(option, halves[1], Weighable);
            if (line is not null && raw is { } before && cooked is { } after)
            {
                weighed[line] = new(before, after);
            }
        }

        return weighed;
    }

    /// <summary>The recipe with these weighings in its lines.</summary>
    public static Recipe Over(Recipe recipe, IReadOnlyDictionary<string, Weighed> weighed) => weighed.Count == 0 ? recipe : recipe with
    {
        Components = [.. recipe.Components.Select(component => component with { Lines = [.. component.Lines.Select(line => Over(line, weighed))] })],
    };

    private static Line Over(Line line, IReadOnlyDictionary<string, Weighed> weighed) =>
        weighed.TryGetValue(line.Id, out var given) ? line with { Weighed = given } : line;
}

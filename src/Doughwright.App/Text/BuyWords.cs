using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>What lies between buying and using, in words: "188 g peeled, 160 g cooked, as weighed".</summary>
internal static class BuyWords
{
    public static string Note(BuyItem item, Voice voice)
    {
        var notes = new List<string>();
        var mass = item.ToBuy;
        foreach (var step in item.Steps)
        {
            mass = mass is { } before && step.Factor is { } factor ? before * factor : null;
            var name = Voice.Kebab(step.Step.ToString());
            notes.Add(mass is { } left
                ? voice.Say($"buy.{name}.{(step.Weighed ? "weighed" : "table")}", ("mass", left))
                : voice.Words[$"buy.{name}.unknown"]);
        }

        if (item is { Pieces: { } pieces, Eggs: null })
        {
            notes.Add(voice.Say("buy.pieces", ("pieces", Count(pieces))));
        }

        if (item.Eggs is { } inAll)
        {
            var (count, part) = inAll.YolkOnly > 0 ? (inAll.YolkOnly, "yolk") : (inAll.WhiteOnly, "white");
            notes.Add(count == 0
                ? voice.Say("buy.eggs.both", ("all", inAll.All))
                : voice.Say($"buy.eggs.{part}{(count == 1 ? "" : "s")}", ("all", inAll.All), ("count", count)));
        }

        if (item.IsInEggs)
        {
            notes.Add(voice.Words["buy.from-the-eggs"]);
        }
        else if (item.TogetherFromEggs is { } eggs)
        {
            notes.Add(voice.Say("buy.from-eggs", ("eggs", Count(eggs))));
        }

        return string.Join(voice.Words["list-comma"], notes);
    }

    /// <summary>A tenth of an egg is said, and "2.0" is not.</summary>
    private static string Count(double pieces) => Show.Number(pieces, Math.Abs(pieces - Math.Round(pieces)) < 0.05 ? 0 : 1);
}

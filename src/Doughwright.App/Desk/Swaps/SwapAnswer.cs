using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Swaps;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Swaps;

/// <summary>The answer to a swap in a few sentences: what stands in for what, what gives and takes, and whether that makes it good.</summary>
internal sealed class SwapAnswer(Recipe recipe, Swapped swapped, Voice voice)
{
    public IReadOnlyList<string> Said()
    {
        if (swapped.Lines.Count == 0)
        {
            return [voice.Words["swaps.nothing-changed"]];
        }

        var said = swapped.Lines.Where(line => line.Change is LineChange.Replaced or LineChange.Removed).Select(Swap).ToList();
        var others = swapped.Lines.Where(line => line.Change is LineChange.Corrected or LineChange.Added).Select(Other).ToArray();
        if (others.Length > 0)
        {
            said.Add(voice.Say("swaps.corrected", ("changes", others)));
        }

        // Another flour is held for the same: what it drinks is told apart.
        var worst = swapped.Residuals.SelectMany(Parts).Select(each => each is { } known ? Math.Abs(known.Value) : double.NaN).DefaultIfEmpty(0).Max();
        said.Add(voice.Words[double.IsNaN(worst) ? "swaps.made-good-not-known" : worst < SwapResidual.Felt ? "swaps.made-good" : "swaps.not-made-good"]);
        return said;
    }

    /// <summary>"Potato rolls with olive oil, without egg".</summary>
    public static string TitleOf(Recipe recipe, IReadOnlyList<Wish> wishes, Voice voice)
    {
        var with = wishes.Where(wish => !wish.IsWithout).Select(wish => wish.By.Split(',')[0].Trim()).Distinct().ToArray();
        var without = wishes.Where(wish => wish.IsWithout).Select(wish => wish.What.Split(',')[0].Trim()).Distinct().ToArray();
        return voice.Say(
            without.Length == 0 ? "swaps.title-with" : with.Length == 0 ? "swaps.title-without" : "swaps.title-both",
            ("title", recipe.Title),
            ("by", with),
            ("what", without));
    }

    private static IEnumerable<Percent?> Parts(SwapResidual residual) => LeftOver.Of(residual).Where(each => each.Matter != LeftMatter.Salt).Select(each => each.Percent);

    private string Swap(SwappedLine line) => voice.Say(
        line.Change == LineChange.Removed ? "swaps.left-out" : "swaps.replaced",
        ("name", line.NameBefore),
        ("by", line.NameAfter),
        ("before", line.Before),
        ("after", line.After),
        ("part", recipe.FindComponent(line.Component)!.Name));

    private string Other(SwappedLine line) => line.Before is { } before
        ? voice.Say("swaps.instead-of", ("name", line.NameAfter), ("after", line.After), ("before", before))
        : voice.Say("swaps.added", ("name", line.NameAfter), ("after", line.After));
}

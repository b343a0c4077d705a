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
        var others = swapped.Lines.Where(line => line.Change is LineChange.Corrected or LineChange.Added && IsSeen(line.Before, line.After, voice)).Select(Other).ToArray();
        if (others.Length > 0)
        {
            said.Add(voice.Say("swaps.corrected", ("changes", others)));
        }

        said.Add(voice.Words["swaps." + Balance()]);
        return said;
    }

    /// <summary>Whether two weights are told in different words.</summary>
    public static bool IsSeen(Mass? before, Mass? after, Voice voice) => before is not { } was || after is not { } now || voice.Text(was) != voice.Text(now);

    private string Balance()
    {
        bool Tells(string kind) => swapped.Consequences.Any(finding => finding.Kind.StartsWith(kind, StringComparison.Ordinal));
        if (Tells("swap-not-made-good") || Tells("swap-part-not-made-good"))
        {
            return "not-made-good";
        }

        // Where only flour is swapped, the salt may give for what it brings.
        if (Tells("swap-flour-") && swapped.Lines.All(line => line.Change == LineChange.Corrected || (line.Change == LineChange.Replaced && line.Before == line.After)))
        {
            return "flour-held";
        }

        // A wash is no matter of balance.
        var parts = swapped.Residuals.Where(residual => residual.Component is not { } part || recipe.FindComponent(part)?.Kind != ComponentKind.Wash).SelectMany(Parts).ToArray();
        return parts.Any(each => each is null) ? "made-good-not-known"
            : parts.Any(each => Math.Abs(each!.Value.Value) >= SwapResidual.Felt) ? "made-good-to-the-scale"
            : "made-good";
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

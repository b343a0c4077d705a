using Doughwright.App.Text;
using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Swaps;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Swaps;

/// <summary>What could not be made good, in words, a picture and a table.</summary>
/// <param name="Pictures">None for what is left over nowhere.</param>
public sealed record SwapLeft(IReadOnlyList<string> Said, IReadOnlyList<string> Pictures, FigureTable Table)
{
    internal static SwapLeft? Of(Recipe recipe, IReadOnlyList<SwapResidual> residuals, Voice voice)
    {
        if (residuals.Count == 0)
        {
            return null;
        }

        var words = new SwapWords(recipe, voice);
        string PartOf(SwapResidual residual) => residual.Component is { } part ? words.PartOf(part) : voice.Words["swaps.the-dough"];
        var drawn = residuals.Select((residual, index) => (residual, index)).Where(each => LeftOverPicture.SaysMore(each.residual));
        return new(
            [.. residuals.Select(residual => SentenceOf(residual, PartOf(residual), voice))],
            [.. drawn.Select(each => LeftOverPicture.Draw(each.residual, PartOf(each.residual), voice, FormattableString.Invariant($"left-{each.index}")))],
            new(
                voice.Say("sizes.table", ("title", voice.Words["swaps.left"])),
                [new(voice.Words["swap.head-part"]), .. LeftOver.Of(residuals[0]).Select(each => new FigureHead(voice.Member(each.Matter)))],
                [.. residuals.Select(residual => new FigureRow(PartOf(residual), [.. LeftOver.Of(residual).Select(each => words.Signed(each.Percent))]))],
                []));
    }

    /// <summary>"Of the dough’s flour: water 0.4 points more, everything sweet as before, …".</summary>
    private static string SentenceOf(SwapResidual residual, string part, Voice voice) => voice.Say(
        residual.Component is null ? "swaps.left-dough" : "swaps.left-part",
        ("part", part),
        ("parts", LeftOver.Of(residual).Select(each => One(each.Matter, each.Percent, voice))));

    private static string One(LeftMatter matter, Percent? percent, Voice voice)
    {
        var name = voice.Words["swaps." + Voice.Kebab(matter.ToString())];
        if (percent is not { } known)
        {
            return voice.Say("swaps.part-not-known", ("name", name));
        }

        var points = Show.Number(Math.Abs(known.Value), 1);
        return LeftOver.IsNone(known) ? voice.Say("swaps.part-same", ("name", name))
            : voice.Say(known.Value > 0 ? "swaps.part-more" : "swaps.part-less", ("name", name), ("points", points));
    }
}

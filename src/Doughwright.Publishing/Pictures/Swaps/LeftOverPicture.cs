using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Swaps;

/// <summary>
/// What a swap leaves over: a bar for each matter, to the right for more and to the left for less, in the greys that the balance of a dough has for it.
/// Dotted lines stand where a hand begins to feel it. What is not known has no bar.
/// </summary>
internal static class LeftOverPicture
{
    private const double Width = 520;
    private const double Zero = 336;
    private const double HalfRange = 96;
    private const double Top = 14;
    private const double Between = 36;
    private const double Bar = 18;
    private const double NameRoom = 160;
    private const double FigureGap = 7;
    private const double FigureDrop = 6;

    /// <summary>The least that the scale reaches to either side, so that little looks little.</summary>
    private const double LeastReach = 2;

    /// <summary>Whether there is anything to be seen.</summary>
    public static bool SaysMore(SwapResidual residual) => LeftOver.Of(residual).Any(each => each.Percent is { } known && !LeftOver.IsNone(known));

    /// <param name="part">What the bars are of, for those who hear the page.</param>
    public static string Draw(SwapResidual residual, string part, Voice voice, string id)
    {
        var all = LeftOver.Of(residual);
        var reach = all.Select(each => Math.Abs(each.Percent?.Value ?? 0)).Append(LeastReach).Max();
        var svg = new Svg();
        var foot = Top + (all.Count * Between);
        foreach (var side in new[] { -1, 1 })
        {
            var felt = Zero + (side * SwapResidual.Felt / reach * HalfRange);
            // Of salt a hand feels nothing.
            svg.Line("cueline", felt, Top, felt, foot - Between);
        }

        for (var i = 0; i < all.Count; i++)
        {
            Row(svg, all[i].Matter, all[i].Percent, Top + ((i + 0.5) * Between), reach, voice);
        }

        svg.Line("edge", Zero, Top, Zero, foot);
        svg.Text(Lettering.Axis.Class, Zero - FigureGap, foot + 20, voice.Words["swaps.picture-less"], Anchor.End);
        svg.Text(Lettering.Axis.Class, Zero + FigureGap, foot + 20, voice.Words["swaps.picture-more"]);
        var description = voice.Say("swaps.picture-description", ("parts", all.Select(each => $"{voice.Member(each.Matter)} {Figure(each.Percent, voice)}")), ("felt", Percent.FromValue(SwapResidual.Felt)));
        return svg.Picture("strip chart", Width, foot + 28, id, voice.Say("swaps.picture-title", ("part", part)), description);
    }

    private static void Row(Svg svg, LeftMatter matter, Percent? percent, double y, double reach, Voice voice)
    {
        svg.Text(Lettering.Name.Class, 0, y + FigureDrop, Lettering.Name.Fitted(voice.Member(matter), NameRoom));
        var value = percent is { } known && !LeftOver.IsNone(known) ? known.Value : 0;
        var length = value / reach * HalfRange;
        if (value != 0)
        {
            svg.Rect(ClassOf(matter), Math.Min(Zero, Zero + length), y - (Bar / 2), Math.Abs(length), Bar);
        }

        // Beyond the dotted line, or it would run through the figure.
        var end = Math.Max(Math.Abs(length), SwapResidual.Felt / reach * HalfRange) + FigureGap;
        svg.Text(Lettering.Figure.Class, value < 0 ? Zero - end : Zero + end, y + FigureDrop, Figure(percent, voice), value < 0 ? Anchor.End : Anchor.Start);
    }

    private static string ClassOf(LeftMatter matter) => matter switch
    {
        LeftMatter.Water => "strand b-w",
        LeftMatter.Sugar => "strand b-s",
        LeftMatter.Fat => "strand b-a",
        _ => "strand b-o",
    };

    private static string Figure(Percent? percent, Voice voice) => percent is not { } known ? voice.Words["not-known"]
        : LeftOver.IsNone(known) ? voice.Words["swaps.picture-none"]
        : (known.Value > 0 ? "+" : "") + Show.Percent(known);
}

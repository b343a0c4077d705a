using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Family;

/// <summary>
/// The family line of a recipe: a laid rope with a bar across for each state that was kept, and a yarn that leaves it for each offshoot. Once for a wide page and
/// once for a narrow one; a style shows one of them.
/// </summary>
internal static class FamilyPicture
{
    public static string Wide(FamilyLine line, Voice voice, string id) => new WideFamily(line, voice).Draw(id);

    public static string Tall(FamilyLine line, Voice voice, string id) => new TallFamily(line, voice).Draw(id);

    /// <summary>What the picture shows.</summary>
    internal static string Title(FamilyLine line, Voice voice) => voice.Say("family.picture.title", ("title", line.Title));

    /// <summary>The same in sentences: every state in order, and where each offshoot leaves.</summary>
    internal static string Description(FamilyLine line, Voice voice)
    {
        string[] said =
        [
            voice.Say("family.picture.states", ("states", voice.List(line.Knots.Select(knot => Named(knot, voice))))),
            .. line.Offshoots.Select(offshoot => voice.Say(
                offshoot.At < 0 ? "family.picture.before" : Whole(offshoot) ? "family.picture.at" : "family.picture.after",
                ("title", offshoot.Title),
                ("state", line.Knots[Before(line, offshoot)].Day))),
        ];
        return string.Join(' ', said);
    }

    /// <summary>A yarn that leaves the line, by two strands.</summary>
    internal static void Offshoot(Svg svg, double length, Func<double, (double X, double Y)> along, (double X, double Y) across)
    {
        foreach (var second in new[] { false, true })
        {
            svg.Path("offshoot", Yarn.Strand(length, along, across, 2.2, 24, second));
        }
    }

    /// <summary>From 0 to 1 along a curve that begins and ends level.</summary>
    internal static double Eased(double part) => part * part * (3 - (2 * part));

    private static bool Whole(FamilyOffshoot offshoot) => offshoot.At == Math.Floor(offshoot.At);

    private static int Before(FamilyLine line, FamilyOffshoot offshoot) => Math.Clamp((int)Math.Floor(offshoot.At), 0, line.Knots.Count - 1);

    private static string Named(FamilyKnot knot, Voice voice) => knot.Said.Length == 0 ? knot.Day : voice.Say("family.picture.state", ("day", knot.Day), ("said", knot.Said));
}

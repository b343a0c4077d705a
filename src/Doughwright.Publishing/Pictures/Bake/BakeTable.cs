using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Sections;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Bake;

/// <summary>How a piece bakes, in figures.</summary>
internal static class BakeTable
{
    /// <summary>As many moments as a person reads, between the first and the last.</summary>
    private const int Between = 7;

    public static FigureTable Of(BakedSection bake, string step, Voice voice)
    {
        var faces = BakePicture.Faces(bake);
        var unit = voice.DegreeUnit.Trim('\u00a0');
        return new(
            voice.Say("bake.table", ("step", step)),
            [
                new(voice.Words["bake.head-after"]),
                new(voice.Words["bake.head-core"], unit),
                .. faces.Select(face => new FigureHead(voice.Words["bake.head-" + face.Key], unit)),
                new(voice.Words["bake.head-lost"], "%"),
            ],
            [
                .. Moments(bake).Select(moment => new FigureRow(
                    voice.Text(moment.After),
                    [voice.Degrees(moment.Core), .. faces.Select(face => voice.Degrees(face.Of(moment))), Show.Number(moment.Lost.Value, 1)])),
            ],
            []);
    }

    private static IEnumerable<BakedMoment> Moments(BakedSection bake) => Enumerable.Range(0, Between + 2)
        .Select(number => bake.Minutes.Minutes * number / (Between + 1))
        .Select(minutes => bake.Course.MinBy(moment => Math.Abs(moment.After.Minutes - minutes))!)
        .Distinct();
}

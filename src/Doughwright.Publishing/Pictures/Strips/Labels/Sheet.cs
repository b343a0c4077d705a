using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips.Geometry;
using Doughwright.Publishing.Pictures.Strips.Marks;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>A strip while it is drawn and written on.</summary>
/// <param name="Body">Null when there is no dough to draw.</param>
internal sealed record Sheet(Layout Layout, Canvas Canvas, Placer Placer, StripWords Words, BodyShape? Body, IReadOnlyList<StrandShape> Strands)
{
    /// <summary>Over the dough of the wide strip.</summary>
    public IReadOnlyList<Head> Heads { get; init; } = [];

    /// <summary>How much lower the wide strip lies because names stand over others.</summary>
    public double Lift { get; init; }

    /// <summary>Under the bench of the wide strip.</summary>
    public IReadOnlyList<CueLine> Cues { get; init; } = [];

    /// <summary>How much lower its rails lie because cues take more lines than fit over them.</summary>
    public double Drop { get; init; }

    /// <summary>Where the names of parts were written.</summary>
    public Dictionary<string, WrittenName> Named { get; } = [];

    public Plan Plan => Layout.Plan;

    public Frame Frame => Layout.Frame;

    public Svg Svg => Canvas.Svg;

    public double Bench => Frame.Bench;

    public double Place(double minute) => Frame.Time.Place(minute);

    public static Sheet Of(Layout layout, string id, StripWords words)
    {
        var canvas = new Canvas(id, layout.Frame);
        var body = BodyShape.Of(layout);
        return new(layout, canvas, new(canvas.Svg, layout.Frame.Width, layout.Frame.Height), words, body, StrandMarks.Shapes(layout, body));
    }
}

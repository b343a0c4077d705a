using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips.Geometry;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Marks;

/// <summary>Ends by their cue, as combs under the bench.</summary>
internal static class CombMarks
{
    private const double UnderBench = 4;

    /// <summary>Teeth closer than this are one black bar.</summary>
    private const double Narrowest = 9;

    /// <summary>Steps of the dough that end by their cue, where the range is wide enough to be drawn.</summary>
    public static IEnumerable<PlannedStep> Ending(Layout layout) => layout.Plan.OnBench.Where(step => step.EndsByCue && Places(layout.Frame, step) is var (low, _, high) && high - low >= Narrowest);

    public static void Draw(Canvas canvas, PlannedStep step)
    {
        var (low, likely, high) = Places(canvas.Frame, step);
        Comb.Draw(canvas.Svg, low, likely, high, (place, depth) => canvas.Frame.AtPlace(place, -UnderBench - depth));
    }

    /// <summary>Where the comb lies along the picture. An open end is drawn as far on as the likely end lies after the low one.</summary>
    public static (double Low, double Likely, double High) Places(Frame frame, PlannedStep step)
    {
        var time = step.Step.Time!.Value;
        double At(double minutes) => frame.Time.Place(step.Start + minutes);
        var high = time.High?.Minutes ?? (2 * time.Likely.Minutes) - time.Low.Minutes;
        return (At(time.Low.Minutes), At(time.Likely.Minutes), At(high));
    }
}

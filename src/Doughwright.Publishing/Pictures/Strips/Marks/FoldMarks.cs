using Doughwright.Publishing.Pictures.Strips.Geometry;

namespace Doughwright.Publishing.Pictures.Strips.Marks;

/// <summary>The double slash through bench and rails where a long wait is drawn short.</summary>
internal static class FoldMarks
{
    private const double Half = 8;
    private const double Slant = 14;

    public static void Draw(Canvas canvas, double bottom, double top)
    {
        foreach (var fold in canvas.Frame.Time.Folds)
        {
            var middle = Middle(canvas.Frame.Time, fold);
            Slash(canvas, "foldgap", middle - (Half / 2), bottom, top);
            Slash(canvas, "foldgap", middle + (Half / 2), bottom, top);
            Slash(canvas, "fold", middle - Half, bottom, top);
            Slash(canvas, "fold", middle + Half, bottom, top);
        }
    }

    /// <summary>Half of what the slash takes along the picture.</summary>
    public const double Reach = Half + (Slant / 2) + 2;

    /// <summary>Place of the slash along the picture: nearer to the start of the fold, because what comes after needs more room for its words.</summary>
    public static double Middle(TimeScale time, FoldedWait fold) => time.Place(fold.From) + (FoldedWait.Drawn / 3);

    private static void Slash(Canvas canvas, string @class, double place, double bottom, double top) =>
        canvas.Svg.Path(@class, [canvas.Frame.AtPlace(place - (Slant / 2), bottom), canvas.Frame.AtPlace(place + (Slant / 2), top)]);
}

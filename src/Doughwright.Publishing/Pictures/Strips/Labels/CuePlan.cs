using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips.Geometry;
using Doughwright.Publishing.Pictures.Strips.Marks;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>
/// Where the cues stand, whole: left of their comb, right of it, or under it on a line that is free. A cue that says only half says something else, so it
/// gets as many lines as it needs, and the rails make room.
/// </summary>
internal sealed class CuePlan
{
    /// <summary>From the bench to the first line, and from line to line.</summary>
    public const double LineHeight = 17;

    /// <summary>So many lines fit between the bench and the rails.</summary>
    private const int Fitting = 2;

    /// <summary>A cue that takes more lines than this is a text; it is cut off.</summary>
    private const int MostLines = 4;

    private const double Beside = 8;
    private const double Apart = 8;

    /// <summary>Steps in which a cue is moved along its line.</summary>
    private const double Move = 6;

    private readonly Frame frame;
    private readonly List<CueLine> lines = [];
    private readonly List<(int Line, double Left, double Right)> taken = [];
    private readonly (double Low, double High)[] combs;
    private readonly double[] slashes;

    private CuePlan(Layout layout, StripWords words)
    {
        frame = layout.Frame;
        var steps = CombMarks.Ending(layout).ToArray();
        combs = [.. steps.Select(step => CombMarks.Places(frame, step)).Select(places => (places.Low, places.High))];
        slashes = [.. frame.Time.Folds.Select(fold => FoldMarks.Middle(frame.Time, fold)).Order()];
        for (var i = 0; i < steps.Length; i++)
        {
            Place(combs[i], Texts(steps[i], words, combs[i]));
        }
    }

    public IReadOnlyList<CueLine> Lines => lines;

    /// <summary>How much lower the rails lie.</summary>
    public double Drop => LineHeight * Math.Max(0, lines.Select(line => line.Line).DefaultIfEmpty(0).Max() - Fitting);

    public static CuePlan Of(Layout layout, StripWords words) => new(layout, words);

    /// <summary>The cue with its times, in as few lines as it takes between the slashes; cut off at a comma, then at a word, only where that would be too many.</summary>
    private string[] Texts(PlannedStep step, StripWords words, (double Low, double High) comb)
    {
        var room = Room(comb, line: Fitting) is var (left, right) ? right - left : 0;
        if (words.Cue(step) is not { } cue)
        {
            return [words.EndRange(step)];
        }

        return Wrapping.Cue(cue, shorter => words.CueWithRange(shorter, step), room, MostLines) ?? [words.EndRange(step)];
    }

    private void Place((double Low, double High) comb, string[] texts)
    {
        var width = texts.Max(Type.Cue.Width);

        // A line that nobody has is free for whatever fits between the slashes.
        for (var line = 1; line <= lines.Count + Fitting + 1; line++)
        {
            foreach (var (x, anchor) in line == 1 ? [(comb.Low - Beside, Anchor.End), (comb.High + Beside, Anchor.Start)] : Under(comb, width))
            {
                var left = anchor switch { Anchor.End => x - width, Anchor.Middle => x - (width / 2), _ => x };
                if (Enumerable.Range(line, texts.Length).All(each => IsFree(comb, each, left, left + width)))
                {
                    lines.AddRange(texts.Select((text, i) => new CueLine(x, anchor, line + i, text)));
                    taken.AddRange(texts.Select((_, i) => (line + i, left, left + width)));
                    return;
                }
            }
        }
    }

    /// <summary>So that it still stands under its comb: at its end, at its start, then moved, the least first.</summary>
    private IEnumerable<(double X, Anchor Anchor)> Under((double Low, double High) comb, double width)
    {
        var (from, to) = (comb.Low - (width / 2), comb.High + (width / 2));
        var (left, right) = Room(comb, Fitting);
        var middle = Math.Clamp((comb.Low + comb.High) / 2, left + (width / 2), Math.Max(left + (width / 2), right - (width / 2)));
        var moved = Enumerable.Range(0, (int)((to - from) / Move) + 1).Select(i => from + (i * Move));
        return [(comb.High, Anchor.End), (comb.Low, Anchor.Start), (middle, Anchor.Middle), .. moved.OrderBy(place => Math.Abs(place - middle)).Select(place => (place, Anchor.Middle))];
    }

    private bool IsFree((double Low, double High) comb, int line, double left, double right) =>
        Room(comb, line) is var (from, to) && left >= from && right <= to
        && !taken.Exists(other => other.Line == line && left < other.Right + Apart && other.Left < right + Apart)
        && (line > 1 || !Array.Exists(combs, other => left < other.High && other.Low < right));

    /// <summary>Between the slashes at both sides of a comb; on lower lines up to where the names of the rails begin.</summary>
    private (double Left, double Right) Room((double Low, double High) comb, int line) =>
    (
        slashes.Where(slash => slash < comb.Low).Select(slash => slash + FoldMarks.Reach).DefaultIfEmpty(0).Max(),
        slashes.Where(slash => slash > comb.High).Select(slash => slash - FoldMarks.Reach).DefaultIfEmpty(line == 1 ? frame.Width : WideLayout.Right).Min()
    );
}

using Doughwright.Publishing.Pictures.Strips.Marks;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>
/// Where the name of every step stands: behind its upright where it fits before the next; else the upright is drawn out over the others, and the name
/// hangs from it like a flag from its pole.
/// </summary>
internal sealed class HeadPlan
{
    /// <summary>Between two names in one row.</summary>
    private const double Apart = 8;

    /// <summary>A name longer than this is no head.</summary>
    private const double Longest = 240;

    private readonly Head[] heads;
    private readonly double width;
    private readonly (double From, double To)[] slashes;

    private HeadPlan(Layout layout, StripWords words)
    {
        (width, var time) = (layout.Frame.Width, layout.Frame.Time);
        slashes = [.. time.Folds.Select(fold => FoldMarks.Middle(time, fold)).Select(middle => (middle - FoldMarks.Reach, middle + FoldMarks.Reach))];
        heads = [.. Places(layout).Select(place => new Head(place.Step, place.X, place.Width, Fitting(words, place.Step, place.Width - Head.Beside - 1)))];

        // From the last to the first: the pole of an earlier one stands left of what hangs from the later ones.
        for (var i = heads.Length - 1; i >= 0; i--)
        {
            if (heads[i].Name is null)
            {
                heads[i] = Raised(heads[i], words) ?? heads[i];
            }
        }
    }

    public IReadOnlyList<Head> Heads => heads;

    /// <summary>What the names over the others take.</summary>
    public double Lift => Head.RowHeight * heads.Select(head => head.Row).DefaultIfEmpty(0).Max();

    public static HeadPlan Of(Layout layout, StripWords words) => new(layout, words);

    /// <summary>The author's name of a step where it fits, else one short word.</summary>
    private static string? Fitting(StripWords words, PlannedStep step, double room) => Wordings(words, step).FirstOrDefault(name => Type.Head.Width(name) <= room);

    private static string[] Wordings(StripWords words, PlannedStep step) => [words.Name(step), words.ShortName(step)];

    private Head? Raised(Head head, StripWords words)
    {
        // Cut off only what is no head in any case.
        string?[] wordings = [.. Wordings(words, head.Step).Where(name => Type.Head.Width(name) <= Longest), Type.Head.Fit(words.Name(head.Step), Longest)];
        // To the left only where nothing finds room at the right, before a slash say: what hangs there stands over another step.
        return (from isLeft in (bool[])[false, true]
                from row in Enumerable.Range(1, heads.Length)
                from name in wordings.OfType<string>()
                select head with { Name = name, Row = row, IsLeft = isLeft }).FirstOrDefault(IsFree);
    }

    private bool IsFree(Head head)
    {
        var raised = heads.Where(other => other.Row > 0).ToArray();
        return head.Left >= 0 && head.Right <= width
            && !Array.Exists(slashes, slash => head.Left < slash.To && slash.From < head.Right)
            && !Array.Exists(raised, other => other.Row == head.Row && head.Left < other.Right + Apart && other.Left < head.Right + Apart)
            && !Array.Exists(raised, other => other.Row >= head.Row && head.Left - 1 < other.X && other.X < head.Right + 1)
            && !Array.Exists(raised, other => other.Row < head.Row && other.Left - 1 < head.X && head.X < other.Right + 1);
    }

    private static IEnumerable<(PlannedStep Step, double X, double Width)> Places(Layout layout)
    {
        var (edges, time) = (layout.Plan.Edges, layout.Frame.Time);
        for (var i = 0; i < edges.Count; i++)
        {
            var x = time.Place(edges[i].Start);
            var end = i + 1 < edges.Count ? time.Place(edges[i + 1].Start) : layout.Frame.Width;

            // A head ends before the slash of a folded wait.
            var slash = time.Folds.Select(fold => FoldMarks.Middle(time, fold) - FoldMarks.Reach).Where(place => place > x).DefaultIfEmpty(end).Min();
            yield return (edges[i], x, Math.Min(end, slash) - x);
        }
    }
}

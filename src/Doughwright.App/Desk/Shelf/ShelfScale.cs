using Doughwright.Engine.Quantities;

namespace Doughwright.App.Desk.Shelf;

/// <summary>Clock and thickness that all rows share. Both go in steps, so that a new recipe rarely changes the strips of the others.</summary>
/// <param name="Span">From the left edge to the right, where the bread is ready.</param>
/// <param name="PixelsPerGram">Height of a gram without gas.</param>
internal sealed record ShelfScale(Duration Span, double PixelsPerGram)
{
    /// <summary>Each step of thickness by this over the next: four of them halve it.</summary>
    private const double StepOfThickness = 1.1892071150027210667;

    /// <summary>What begins before the longest is cut off at its left edge, and its row says when it begins.</summary>
    private static readonly double[] Hours = [6, 8, 10, 12, 15, 18, 21, 24, 30, 36, 48, 60, 72, 96];

    /// <summary>One slip of a weight shall not flatten the strips of all others: what is wrong counts only where nothing else is there.</summary>
    /// <param name="rows">Null where a row is not known yet.</param>
    public static ShelfScale Of(IEnumerable<KeptRow?> rows)
    {
        var all = rows.OfType<KeptRow>().Where(row => row.HasCourse).ToList();
        var sound = all.Where(row => !row.IsWrong).ToList();
        var drawn = sound.Count > 0 ? sound : all;
        var longest = drawn.Select(row => row.Total!.Value / 60).DefaultIfEmpty(0).Max();
        var most = drawn.Select(row => row.MostPixelsPerGram).DefaultIfEmpty(1).Min();
        var hours = Hours.FirstOrDefault(hours => hours > longest, Hours[^1]);
        var scale = Math.Pow(StepOfThickness, Math.Floor(Math.Log(most, StepOfThickness)));
        return new(Duration.FromHours(hours), scale);
    }

    /// <summary>Whether a strip fits into its row.</summary>
    public bool Holds(KeptRow row) => row.MostPixelsPerGram >= PixelsPerGram;

    /// <summary>Part of the name of a strip that is kept.</summary>
    public string Name => FormattableString.Invariant($"{Span.Minutes:0}-{PixelsPerGram * 1e9:0}");
}

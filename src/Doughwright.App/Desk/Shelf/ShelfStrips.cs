using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Strips;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The small strips of the rows, all on one clock and one scale. Nights lie behind them and not in them, so that a strip stays good when the clock is set.</summary>
internal static class ShelfStrips
{
    /// <summary>Height of a gram at which this strip just fills its row.</summary>
    public static double ScaleOf(Drawable drawable) => Strips.MiniScale([(drawable.Rehearsal, drawable.Course)]);

    public static string Draw(Drawable drawable, ShelfScale scale, string id, Voice voice) =>
        Strips.Mini(drawable.Rehearsal, drawable.Course, voice, new() { Id = id, Span = scale.Span, PixelsPerGram = scale.PixelsPerGram });

    public static string Axis(ShelfScale scale, DateTime ready, Voice voice) =>
        Strips.Axis(new() { Span = scale.Span, ReadyAt = Duration.FromMinutes(ready.TimeOfDay.TotalMinutes) }, voice);
}

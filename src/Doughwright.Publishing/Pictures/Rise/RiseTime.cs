using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Rise;

/// <summary>The time of a step in words: a duration, or that it never comes.</summary>
internal static class RiseTime
{
    public static string Of(Estimate<Duration>? time, Voice voice) => time is { } known ? voice.Text(known.Likely) : voice.Say("rise.never");

    /// <summary>"1:33 to 1:57"; null where the author's own figure is all there is.</summary>
    public static string? RangeOf(Estimate<Duration> time, Voice voice) =>
        time.High is { } high && voice.Text(time.Low, "column") == voice.Text(high, "column") ? null : voice.Range(time.Low, time.High);
}

using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Rise;

/// <summary>The time of a step in words: a duration, or that it never comes.</summary>
internal static class RiseTime
{
    public static string Of(Estimate<Duration>? time, Voice voice) => time is { } known ? voice.Text(known.Likely) : voice.Say("rise.never");

    public static string RangeOf(Estimate<Duration> time, Voice voice) => voice.Range(time.Low, time.High);
}

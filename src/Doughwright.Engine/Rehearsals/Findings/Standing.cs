using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>How long something that spoils has stood out of the fridge on its way, and in which step longest.</summary>
/// <param name="Minutes">Likely minutes in all, waiting between steps included.</param>
/// <param name="Longest">The step that makes most of it; null while it has stood in none.</param>
/// <param name="EndsAt">When its last step ends, min; null when that is not known, and then no waiting is counted.</param>
/// <param name="IsCold">Whether its last step left it in the fridge, where it waits for the next.</param>
internal sealed record Standing(double Minutes, Step? Longest, double LongestMinutes, double? EndsAt, bool IsCold)
{
    public static Standing From(double? minute) => new(0, null, 0, minute, false);

    /// <summary>Waits for its next step and goes through it.</summary>
    /// <param name="start">When the step starts; null when it is not known.</param>
    /// <param name="minutes">How long it takes.</param>
    /// <param name="isOut">Whether it is out of the fridge in it.</param>
    /// <param name="waitsOut">Whether waiting counts: the room is not itself as cold as a fridge.</param>
    public Standing Through(Step step, double? start, double minutes, bool isOut, bool waitsOut)
    {
        var waited = waitsOut && !IsCold && start - EndsAt is { } gap ? Math.Max(0, gap) : 0;
        var stands = isOut ? minutes : 0;
        var longer = stands > LongestMinutes;
        return new(Minutes + waited + stands, longer ? step : Longest, longer ? stands : LongestMinutes, start + minutes, step.Where == Where.Fridge);
    }

    /// <summary>Of two that come together the one that stood longer.</summary>
    public static Standing Longer(Standing? one, Standing other) => one is null || other.Minutes > one.Minutes ? other : one;
}

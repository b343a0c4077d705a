using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>What a loaf is like when it has cooled after the oven, in sentences: the same on a page and on the desk.</summary>
internal static class CoolSentences
{
    /// <summary>Empty where no loaf cools, or where that is not computed.</summary>
    public static IEnumerable<string> Of(RehearsedStep step, Voice voice)
    {
        if (step.Cooling?.Invoke() is not { } cooled)
        {
            yield break;
        }

        var high = cooled.Core.High ?? cooled.Core.Likely;
        yield return voice.Say(
            voice.Degrees(cooled.Core.Low) == voice.Degrees(high) ? "cooling.cools-exact" : "cooling.cools",
            ("core", cooled.Core.Likely),
            ("cores", voice.Range(cooled.Core.Low, high, asked: false)),
            ("loss", cooled.Loss.Likely),
            ("low", cooled.Loss.Low),
            ("high", cooled.Loss.High ?? cooled.Loss.Likely));
        if (cooled.InTin)
        {
            yield return voice.Words["cooling.in-tin"];
        }

        if (KeyOf(cooled.Until) is { } key)
        {
            yield return voice.Words[key];
            if (step.Cue is null)
            {
                yield return voice.Words["cooling.feel"];
            }
        }
    }

    private static string? KeyOf(CooledTo until) => until switch
    {
        CooledTo.SameCore => "cooling.same-core",
        CooledTo.NearRoom => "cooling.near-room",
        CooledTo.RoomIsWarm => "cooling.room-is-warm",
        _ => null,
    };
}

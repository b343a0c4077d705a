using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>What a piece is like when it comes out of the oven, in sentences: the same on a page and on the desk.</summary>
internal static class BakeSentences
{
    /// <summary>Empty where nothing bakes, or where that is not computed.</summary>
    public static IEnumerable<string> Of(RehearsedStep step, Voice voice)
    {
        if (step.Bake?.Invoke() is not { } bake)
        {
            yield break;
        }

        yield return voice.Say(
            "bake.comes-out",
            ("core", bake.Core.Likely),
            ("surface", bake.Surface.Likely),
            ("surfaces", voice.Range(bake.Surface.Low, bake.Surface.High, asked: true)),
            ("loss", bake.Loss.Likely),
            ("low", bake.Loss.Low),
            ("high", bake.Loss.High ?? bake.Loss.Likely));
        if (step.Time is { Likely: var time } && Show.Duration(time) != Show.Duration(bake.CoreAfter))
        {
            yield return voice.Say("bake.for-crust", ("done", bake.DoneCore), ("time", bake.CoreAfter));
        }

        yield return voice.Degrees(bake.CarriesTo) == voice.Degrees(bake.Core.Likely)
            ? voice.Words["bake.carries-none"]
            : voice.Say(bake.CarriesFor.Minutes < 1 ? "bake.carries-soon" : "bake.carries", ("carried", bake.CarriesTo), ("after", bake.CarriesFor));
    }
}

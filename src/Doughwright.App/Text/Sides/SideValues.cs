using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Sides;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text.Sides;

/// <summary>Values of one recipe in words.</summary>
internal sealed class SideValues(Recipe recipe, Voice voice)
{
    public SideCell Cell(Aspect aspect, object? value) => (aspect, value) switch
    {
        (_, null) => new(voice.Words[aspect is Aspect.Trays or Aspect.OvenMode or Aspect.HomeShelf or Aspect.HomeProof or Aspect.Vessel ? "sides.not-said" : "sides.none"]),
        (_, LineAmount { OfFlour: { } share } amount) => new(voice.Text(share), amount.Typed),
        (_, LineAmount amount) => new(amount.Typed),
        (Aspect.Words or Aspect.StepWords or Aspect.Own or Aspect.Without or Aspect.Swap or Aspect.Accepted, _) => new(voice.Words["sides.said"]),
        (Aspect.Tool, _) => new(voice.Words["sides.there"]),
        (Aspect.Keeping, string) => new(voice.Words["sides.said"]),
        (Aspect.Region, _) => new(recipe.RegionCode ?? voice.Words["sides.none"]),
        (Aspect.StepPart, string part) => new(recipe.FindComponent(part)?.Name ?? part),
        (_, IReadOnlyList<OtherWay> ways) => new(ways.Count == 0 ? voice.Words["sides.none"] : voice.List(ways.Select(way => way.Id))),
        (_, IReadOnlyList<Fold> folds) => new(folds.Count == 0 ? voice.Words["sides.none"] : voice.List(folds.Select(Text))),
        (_, IReadOnlyList<string> names) => new(names.Count == 0 ? voice.Words["sides.none"] : voice.List(names.Select(NameOf))),
        _ => new(Text(value!)),
    };

    private string Text(object value) => value switch
    {
        StepEnd end => Text(end),
        Measured measured => Text(measured),
        Vessel vessel => Text(vessel),
        Fold fold => Text(fold),
        DialChange then => voice.Say("sides.dial-then", ("dial", Show.TemperatureWritten(then.Dial, voice.Measures)), ("after", then.After)),
        LineWarmth { Stated: { } stated } => Show.TemperatureWritten(stated, voice.Measures),
        LineWarmth warmth => voice.Member(warmth.Kind),
        Weighed weighed => voice.Say("sides.weighed", ("raw", weighed.RawPeeled), ("cooked", weighed.Cooked)),
        AirProfile air => voice.List(air.Knots.Select(knot => knot.From == Duration.Zero
            ? Show.TemperatureWritten(knot.Air, voice.Measures)
            : voice.Say("sides.air-from", ("air", Show.TemperatureWritten(knot.Air, voice.Measures)), ("from", knot.From)))),
        OvenTraits traits => Text(traits),
        Temperature temperature => Show.TemperatureWritten(temperature, voice.Measures),
        Length length when length == default => voice.Text(length, "altitude"),
        string words => words,
        _ => voice.Text(value),
    };

    private string Text(StepEnd end) => end switch
    {
        StepEnd.AfterTime after => voice.Say("sides.end.after", ("time", after.Time)),
        StepEnd.AtTemperature at => voice.Say("sides.end.at", ("temperature", Show.TemperatureWritten(at.Temperature, voice.Measures))),
        StepEnd.AtGrowth at => voice.Say("sides.end.growth", ("times", at.Times)),
        StepEnd.AtCore at => voice.Say("sides.end.core", ("temperature", Show.TemperatureWritten(at.Temperature, voice.Measures))),
        StepEnd.ByCue by => voice.Say("sides.end.cue", ("time", by.Estimate)),
        StepEnd.WhenRipe { About: { } about } => voice.Say("sides.end.ripe-about", ("time", about)),
        _ => voice.Words["sides.end.ripe"],
    };

    private string Text(Measured measured)
    {
        string[] seen =
        [
            .. measured.Time is { } time ? [voice.Text(time)] : Array.Empty<string>(),
            .. measured.Temperature is { } temperature ? [Show.TemperatureWritten(temperature, voice.Measures)] : Array.Empty<string>(),
            .. measured.On is { } day ? [voice.Say("sides.measured.on", ("day", day))] : Array.Empty<string>(),
            .. measured.TimesSeen > 1 ? [voice.Say("sides.measured.times", ("times", measured.TimesSeen))] : Array.Empty<string>(),
            .. measured.Air is { } air ? [voice.Say("sides.measured.air", ("air", Show.TemperatureWritten(air, voice.Measures)))] : Array.Empty<string>(),
        ];
        return string.Join(voice.Words["list-comma"], seen);
    }

    private string Text(Vessel vessel)
    {
        if (vessel.IsNone)
        {
            return voice.Words["sides.no-vessel"];
        }

        var shape = voice.Member(vessel.Shape);
        string[] said =
        [
            vessel.Material is { } material ? voice.Say("sides.vessel", ("material", voice.Member(material)), ("shape", shape)) : shape,
            .. vessel.Mass is { } mass ? [voice.Text(mass)] : Array.Empty<string>(),
            .. vessel.Size is { } size ? [VesselSizeText.Write(size)] : Array.Empty<string>(),
            .. vessel.Warmed ? [voice.Words["sides.warmed"]] : Array.Empty<string>(),
        ];
        return string.Join(voice.Words["list-comma"], said);
    }

    private string Text(Fold fold) => voice.Say("sides.fold", ("after", fold.After), ("hands", fold.Hands));

    private string Text(OvenTraits traits)
    {
        string[] said =
        [
            .. traits.Hearth is { } hearth ? [voice.Member(hearth.Material)] : Array.Empty<string>(),
            .. traits.OffDial is { } off ? [voice.Say("sides.oven.off", ("off", off))] : Array.Empty<string>(),
            .. traits.HeatsIn is { } heats ? [voice.Say("sides.oven.heats", ("time", heats))] : Array.Empty<string>(),
            .. traits.RecoversIn is { } recovers ? [voice.Say("sides.oven.recovers", ("time", recovers))] : Array.Empty<string>(),
            voice.Member(traits.Steam),
        ];
        return string.Join(voice.Words["list-comma"], said);
    }

    /// <summary>A step, a part or a line of this recipe by its id; other words as they are.</summary>
    private string NameOf(string id) =>
        recipe.FindStep(id)?.Name ?? recipe.FindComponent(id)?.Name ?? recipe.Components.SelectMany(part => part.Lines).FirstOrDefault(line => line.Id == id)?.Name ?? id;
}

using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Warming;

namespace Doughwright.Publishing.Wording;

/// <summary>Sentences about places made warm, the same on every surface.</summary>
internal sealed class PlaceWords(Rehearsal rehearsal, PlaceAdvice advice, Voice voice)
{
    private const double QuartsPerLitre = 1.0566882;

    private string Step => rehearsal.FindStep(advice.Step) is { } step ? StepName.Of(step, voice) : advice.Step;

    public string Title()
    {
        var kitchen = rehearsal.Kitchen.Name;
        return voice.Say(
            kitchen.Length > 0 ? "place.title" : "place.title-unnamed",
            ("target", advice.Target), ("step", Step), ("title", rehearsal.Recipe.Title), ("kitchen", kitchen));
    }

    /// <summary>Where matters stand, and whether anything needs to be done.</summary>
    public string Question()
    {
        if (advice.AtTarget is not { } time)
        {
            return voice.Say(
                advice.Refusal switch
                {
                    PlaceRefusal.NeverEnds => "place.never-at-target",
                    PlaceRefusal.OverAtOnce => "place.over-at-once",
                    PlaceRefusal.LongerThanADay => "place.longer-than-a-day",
                    _ => "place.not-known",
                },
                ("step", Step),
                ("target", advice.Target));
        }

        var stands = voice.Say(
            advice.RoomDoes ? "place.room-does" : "place.stands",
            ("room", Show.Temperature(advice.Room, voice.Measures)), ("dough", Show.Temperature(advice.DoughStart!.Value, voice.Measures)), ("step", Step));
        var told = stands + " " + voice.Say("place.at-target", ("target", advice.Target), ("step", Step), ("time", time.Likely), ("range", Range(time)));
        return advice.RoomDoes || advice.Places.Count > 0 ? told : told + " " + voice.Words["place.none-holds"];
    }

    /// <summary>How much water, how warm, and when again.</summary>
    public string Water(PlaceAnswer place)
    {
        var key = place.Kind == PlaceKind.WaterBath ? "place.bath" : advice.IsCooling ? "place.jug-cooling" : "place.jug";
        var first = voice.Say(
            key, ("water", Amount(place.Water)), ("warmth", Warmth(place.WaterTemperature)), ("lead", place.Lead));
        return place.RenewEvery is { } every
            ? first + " " + voice.Say(place.Renewals == 1 ? "place.renew-once" : "place.renew", ("every", every), ("times", place.Renewals))
            : first;
    }

    public string Outcome(PlaceAnswer place)
    {
        var mean = voice.Say(
            place.Reaches ? "place.mean" : IsBeyond(place) ? "place.mean-over" : "place.mean-short",
            ("mean", Show.Temperature(place.Mean.Likely, voice.Measures)),
            ("range", voice.Range(place.Mean.Low, place.Mean.High, asked: false)),
            ("within", place.PlaceWithin),
            ("miss", TemperatureDelta.FromKelvins(1)),
            ("whole", place.Course[^1].After),
            ("target", advice.Target));
        var dough = voice.Say(
            "place.dough",
            ("start", Show.Temperature(advice.DoughStart!.Value, voice.Measures)),
            ("end", Show.Temperature(place.DoughEnd.Likely, voice.Measures)),
            ("range", voice.Range(place.DoughEnd.Low, place.DoughEnd.High, asked: false)));
        var time = place.Time is { } taken
            ? voice.Say("place.takes", ("step", Step), ("time", taken.Likely), ("range", Range(taken)))
            : voice.Say("place.takes-forever", ("step", Step));
        return $"{mean} {dough} {time}";
    }

    /// <summary>Colder than asked where it is cooled, warmer where it is warmed.</summary>
    private bool IsBeyond(PlaceAnswer place) => advice.IsCooling ? place.Mean.Likely < advice.Target : place.Mean.Likely > advice.Target;

    /// <summary>What to mind there.</summary>
    public string Mind(PlaceCaution caution, PlaceAnswer place) => Mind(
        caution == PlaceCaution.YeastHeat && place.Kind == PlaceKind.WaterBath ? "place-caution.yeast-heat-bath" : KeyOf(caution));

    /// <summary>What to mind in all of them.</summary>
    public string Mind() => Mind(advice.IsCooling ? "place-caution.thermometer-cooling" : KeyOf(PlaceCaution.Thermometer));

    private static string KeyOf(PlaceCaution caution) => "place-caution." + Voice.Kebab(caution.ToString());

    private string Mind(string key) => voice.Say("place.mind", ("caution", voice.Say(
        key,
        ("dies", Show.TemperatureAsked(Places.YeastDies, voice.Measures)),
        ("most", Show.TemperatureAsked(Places.HottestBath, voice.Measures)))));

    public string Assumed(PlaceAnswer place) => voice.Say(
        "place.assumed",
        ("figures", voice.List(place.RestsOn.Select(figure => voice.Say(
            $"place-figure.{figure.Name}", ("value", Figure(figure.Value.Likely)), ("low", Figure(figure.Value.Low)), ("high", Figure(figure.Value.High ?? figure.Value.Likely)), ("unit", figure.Unit))))));

    /// <summary>What the other choice is, in a word.</summary>
    public string RoomHead() => advice switch
    {
        { IsCooling: false, RoomAgainstTarget.Longer.Likely.Minutes: >= 0 } or { IsCooling: false, RoomAgainstTarget: null } => voice.Words["place.slower-head"],
        { IsCooling: true, RoomAgainstTarget.Longer.Likely.Minutes: < 0 } => voice.Words["place.quicker-head"],
        _ => voice.Words["place.room-head"],
    };

    /// <summary>The other choice.</summary>
    public string Room() => advice is { InRoom: { } time, RoomAgainstTarget: { } slip }
        ? voice.Say(
            "place.in-room", ("room", Show.Temperature(advice.Room, voice.Measures)), ("step", Step), ("time", time.Likely), ("range", Range(time)), ("slip", Longer(slip)))
        : voice.Say("place.in-room-never", ("room", Show.Temperature(advice.Room, voice.Measures)), ("step", Step));

    public string Miss(string key, Slip? slip) => voice.Say(
        key, ("miss", TemperatureDelta.FromKelvins(2)), ("slip", slip is null ? voice.Words["place.never"] : Longer(slip)));

    public string Cue() => rehearsal.FindStep(advice.Step)?.Cue is { Length: > 0 } cue ? voice.Say("place.cue", ("cue", cue)) : voice.Words["place.by-sight"];

    /// <summary>"29 min longer (20 min to 40 min), 28 %".</summary>
    private string Longer(Slip slip)
    {
        var (likely, low, high) = (slip.Longer.Likely, slip.Longer.Low, slip.Longer.High);
        return likely.Minutes >= 0
            ? voice.Say("place.longer", ("time", likely), ("range", voice.Range(low, high, inSentence: true)), ("share", Share(slip.Share.Likely.Value)))
            : voice.Say("place.shorter", ("time", likely * -1), ("range", voice.Range((high ?? Duration.Zero) * -1, low * -1, inSentence: true)), ("share", Share(-slip.Share.Likely.Value)));
    }

    /// <summary>A bath is mixed to half a degree.</summary>
    private string Warmth(Temperature water) => voice.Measures == MeasureSystem.Us ? Show.TemperatureAsked(water, voice.Measures) : Show.TemperatureWritten(water);

    /// <summary>As people measure water: litres, or quarts.</summary>
    private string Amount(Mass water) => voice.Measures == MeasureSystem.Us
        ? voice.Say("place.quarts", ("quarts", Math.Round(water.Kilograms * QuartsPerLitre * 4) / 4))
        : voice.Say("place.litres", ("litres", water.Kilograms));

    private static string Share(double percent) => Show.Number(percent, 0);

    private string Range(Estimate<Duration> time) => voice.Range(time.Low, time.High, inSentence: true);

    private static string Figure(double value) => Show.Number(value, value >= 10 ? 0 : 1);
}

using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>Figures of a rehearsal as finished words, each with its place in the command line's JSON and with what it is at home where that reads otherwise.</summary>
internal sealed class Figures(DeskState state, Voice voice)
{
    public Rehearsal Here => state.Here;

    public Rehearsal Home => state.Home;

    public Voice Voice => voice;

    public DeskState State => state;

    public RehearsedStep? AtHome(RehearsedStep step) => Home.FindStep(step.Id);

    /// <summary>A time in a sentence.</summary>
    public Fig Time(Duration time, string of, Duration? home = null) => Against(
        new(Show.Duration(time), time.Minutes, of) { Strong = true }, home is { } other ? Show.Duration(other) : null);

    /// <summary>A time in a column.</summary>
    public Fig Column(Duration time, string of, Duration? home = null)
    {
        var text = Show.DurationColumn(time);
        return new(text, time.Minutes, of) { Moved = home is { } other && Show.DurationColumn(other) != text };
    }

    /// <summary>Whole minutes without their unit, for columns that name it.</summary>
    public static Fig Minutes(Duration time, string of) => new(Show.Number(time.Minutes, 0), time.Minutes, of);

    public Fig Warmth(Temperature warmth, string of, Temperature? home = null, bool asked = false) => Against(
        new(Text(warmth, asked), warmth.Celsius, of) { Strong = true }, home is { } other ? Text(other, asked) : null);

    /// <summary>Degrees without their unit, for columns that name it.</summary>
    public Fig Degrees(Temperature warmth, string? of, Temperature? home = null, bool asked = false)
    {
        var text = voice.Degrees(warmth, asked);
        return new(text, warmth.Celsius, of) { Moved = home is { } other && voice.Degrees(other, asked) != text };
    }

    public Fig Weight(Mass mass, string? of) => new(Show.Mass(mass, voice.Measures), mass.Grams, of);

    /// <summary>The dial of an oven, with its mode; the same baking at home stands beside it when it is another setting.</summary>
    public Fig? Dial(RehearsedStep step)
    {
        if (step.Dial is not { } dial)
        {
            return null;
        }

        var of = $"steps.{step.Id}.dial.{(voice.Measures == MeasureSystem.Us ? "fahrenheit" : "celsius")}";
        return Against(
            new(voice.Dial(dial.Here), voice.DialDegrees(dial.Here), of) { Strong = true }, AtHome(step)?.Dial is { } other ? voice.Dial(other.Here) : null);
    }

    /// <summary>"1 h 33 min to 1 h 57 min", nothing where the range is no wider than what is printed.</summary>
    public Told Range(Estimate<Duration> time, string low, string high)
    {
        if (time.High is { } end && Show.Duration(end) == Show.Duration(time.Low))
        {
            return Told.Nothing;
        }

        var from = new Fig(Show.Duration(time.Low), time.Low.Minutes, low);
        return time.High is { } to
            ? Told.Say(voice, "recipe.range", ("low", from), ("high", new Fig(Show.Duration(to), to.Minutes, high)))
            : Told.Say(voice, "recipe.range-open", ("low", from));
    }

    public Told RangeOf(RehearsedStep step) => step.Time is { } time ? Range(time, $"steps.{step.Id}.minutesLow", $"steps.{step.Id}.minutesHigh") : Told.Nothing;

    /// <summary>"1 h 40 min (1 h 26 min to 1 h 52 min; was 1 h 45 min)": one bracket right behind the figure says all that belongs to it.</summary>
    public Told Likely(Fig figure, Told range) => range.IsEmpty ? Told.Of(figure)
        : figure.Was is { } was
        ? new([new Piece.Figure(figure with { Was = null, Moved = true }), .. Told.Say(voice, "recipe.range-and", ("range", range), ("was", new Piece.Was(was))).Pieces])
        : new([new Piece.Figure(figure), .. Told.Say(voice, "recipe.range-alone", ("range", range)).Pieces]);

    /// <summary>How long a step takes, with its range; only where that is known.</summary>
    public Told Likely(RehearsedStep step, Estimate<Duration> time) => Likely(Time(time.Likely, $"steps.{step.Id}.minutes", step.HomeTime), RangeOf(step));

    /// <summary>The same for a column.</summary>
    public Told ColumnRange(Estimate<Duration> time, string of)
    {
        if (time.High is { } end && Show.DurationColumn(end) == Show.DurationColumn(time.Low))
        {
            return Told.Nothing;
        }

        var from = new Fig(Show.DurationColumn(time.Low), time.Low.Minutes, of + "Low");
        return time.High is { } to
            ? Told.Say(voice, "range", ("low", from), ("high", new Fig(Show.DurationColumn(to), to.Minutes, of + "High")))
            : Told.Say(voice, "range-open", ("low", from));
    }

    /// <summary>", until “at the tape on the bowl”", nothing where the author wrote no cue.</summary>
    public Told Until(RehearsedStep step) => step.Cue is { Length: > 0 } cue ? Told.Say(voice, "recipe.until", ("cue", new Piece.Cue(LiveProse.Of(cue, step.Id, Here, voice)))) : Told.Nothing;

    /// <summary>Stands where something is not known: with the finding that says what would make it known, if there is one.</summary>
    public Told NotKnown(string place)
    {
        var index = state.Findings.ToList().FindIndex(finding => finding.Place == place && FindingShape.SaysWhatWouldHelp(finding));
        var unknown = new Piece.Unknown(voice.Words["not-known"]);
        return index < 0
            ? Told.Say(voice, "recipe.not-known", ("unknown", unknown))
            : Told.Say(voice, "recipe.not-known-see", ("unknown", unknown), ("finding", new Piece.Link(voice.Say("recipe.finding", ("number", index + 1)), $"#finding-{index + 1}")));
    }

    public string StepName(RehearsedStep step) => Doughwright.Publishing.Wording.StepName.Of(step, voice);

    /// <summary>The author's name of a part or an ingredient, by id.</summary>
    public string NameOf(string id) =>
        Here.Recipe.FindComponent(id)?.Name ?? Here.Recipe.Components.SelectMany(component => component.Lines).FirstOrDefault(line => line.Id == id)?.Name ?? id;

    /// <summary>The name of a step within a sentence, after a colon.</summary>
    public string InSentence(RehearsedStep step) => Capital.Small(StepName(step));

    /// <summary>Names of lines within a sentence: "scald and potato".</summary>
    public string NamesOf(IEnumerable<string> ids) => voice.List(ids.Select(id => Capital.Small(NameOf(id))));

    /// <summary>The last dough that is mixed.</summary>
    public RehearsedComponent? Dough => Here.Components.LastOrDefault(component => component.Kind == ComponentKind.Dough);

    private string Text(Temperature warmth, bool asked) => asked ? Show.TemperatureAsked(warmth, voice.Measures) : Show.Temperature(warmth, voice.Measures);

    private Fig Against(Fig here, string? home) => home is null || home == here.Text ? here : here with { Was = voice.Say("recipe.was", ("figure", home)) };
}

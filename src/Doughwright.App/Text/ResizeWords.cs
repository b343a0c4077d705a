using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>What resizing changed, sentence by sentence and figure by figure: the command line and the desk say the same.</summary>
internal sealed class ResizeWords(Resized resized, Voice voice)
{
    private const double ShownError = 0.005;
    private const double ShownOff = 0.05;

    /// <summary>The size, what it makes, and how it was rounded; only where it was not refused.</summary>
    public IReadOnlyList<string> Head()
    {
        var after = resized.After!;
        var said = new List<string> { voice.Say("resize.head", ("factor", resized.Factor), ("before", resized.Before.Dough), ("after", after.Dough)) };
        if (after.Recipe.Make is { } make)
        {
            said.Add(Makes("resize.makes", make));
        }

        var off = (after.Dough - (resized.Before.Dough * resized.Factor!.Value)).Grams;
        var scale = resized.ScaleInOunces?.Replace(' ', '\u00a0') ?? (object)resized.Scale;
        said.Add(Math.Abs(off) < ShownOff
            ? voice.Say("resize.rounded", ("scale", scale))
            : voice.Say("resize.rounded-off", ("scale", scale), ("off", Signed(off, 1, "\u00a0g"))));
        return said;
    }

    /// <summary>The author's word for the pieces, where it was written for as many: one, or several.</summary>
    /// <param name="key">Of the words with the author's word; beside it stand those for one piece and for many.</param>
    public string Makes(string key, Make make) => voice.Say(
        resized.Before.Recipe.Make is { } was && ((was.Pieces == 1) == (make.Pieces == 1) || was.What != make.What) ? key : make.Pieces == 1 ? key + "-one" : key + "-many",
        ("pieces", make.Pieces),
        ("what", make.What),
        ("piece", make.PieceMass));

    public string PartOf(ResizedLine line) => resized.Before.FindComponent(line.Component)?.Name ?? line.Component;

    public string Now(ResizedLine line) => line.Typed.Replace(' ', '\u00a0');

    public string Error(ResizedLine line) => line.Form == LineForm.Pieces ? voice.Words["resize.whole"] : IsExact(line) ? "" : Signed(line.Error.Grams, 2, "\u00a0g");

    public string ErrorPercent(ResizedLine line) => IsExact(line) || line.ErrorPercent is not { } percent ? "" : Signed(percent.Value, 1, "\u00a0%");

    public string Choice(WholeChoice choice) => voice.Say(
        IsInSeveral(choice) ? "resize.choice-in" : "resize.choice",
        ("name", choice.Name),
        ("part", resized.Before.FindComponent(choice.Component)!.Name),
        ("needed", choice.Needed),
        ("piece", choice.Piece),
        ("mass", choice.Piece * choice.Needed));

    /// <param name="key">What is shifted, in words with the same figures.</param>
    public string Shift(WholeChoice choice, WholeOption option, string key = "resize.option") => voice.Say(
        IsOutside(choice) ? key + "-outside" : key,
        ("line", Taken(choice)),
        ("count", option.Count),
        ("mass", option.Mass),
        ("than", Signed(((option.Count / choice.Needed) - 1) * 100, 0, "\u00a0%")),
        ("dough", Signed(option.Shift.Dough.Grams, 0, "\u00a0g")),
        ("water", Points(option.Shift.TrueWater)),
        ("sugar", Points(option.Shift.TrueSugar)),
        ("fat", Points(option.Shift.TrueFat)),
        ("hydration", Points(option.Shift.Hydration)),
        ("whole", option.WholeDough));

    /// <summary>The line as it is taken in pieces: with its part where it stands in several.</summary>
    public string Taken(WholeChoice choice) => IsInSeveral(choice) ? $"{choice.Line}@{choice.Component}" : choice.Line;

    public string Fit(Fit fit) => voice.Say(
        $"resize.fit-{Voice.Kebab(fit.Kind.ToString())}{(fit is { Kind: FitKind.Tin, Needed: null } ? "-all" : "")}.{Voice.Kebab(fit.Verdict.ToString())}",
        ("step", fit.Name),
        ("held", fit.HeldBefore),
        ("holds", fit.HoldsNow),
        ("needs", fit.Needs),
        ("room", fit.Has is { } has ? voice.Say("resize.room", ("has", has)) : voice.Words["resize.room-not-said"]),
        ("needed", fit.Needed),
        ("per", fit.PerTray),
        ("there", fit.There),
        ("loads", fit.Loads));

    public string Was(ResizedMeasure measure) => Figure(measure.Time is { } time ? time : measure.Temperature) ?? "";

    public string NowOf(ResizedMeasure measure) => Figure(measure.NewTime is { } time ? time : measure.NewTemperature) ?? voice.Words["not-known"];

    /// <summary>What it comes to in eight of ten; empty where that is not known.</summary>
    public string Range(ResizedMeasure measure) => measure.NewTimeLow is { } low ? voice.Range(low, measure.NewTimeHigh, inSentence: true)
        : measure.NewTemperatureLow is { } cool ? voice.Range(cool, measure.NewTemperatureHigh, asked: false)
        : "";

    public string Stands(ResizedMeasure measure) => voice.Words[measure.Stands ? "resize.stands" : "resize.gone"];

    private bool IsInSeveral(WholeChoice choice) => resized.Before.Components.Count(part => part.Lines.Any(line => line.Id == choice.Line)) > 1;

    /// <summary>A wash or a filling shifts nothing of the dough.</summary>
    private bool IsOutside(WholeChoice choice) => resized.Before.FindComponent(choice.Component)!.ShareInDough == 0;

    private string? Figure(object? figure) => figure is null ? null : voice.Text(figure);

    private static bool IsExact(ResizedLine line) => Math.Abs(line.Error.Grams) < ShownError;

    private string Points(double? points) => points is { } known ? Signed(known, 1, "") : voice.Words["not-known-short"];

    private string Signed(double value, int decimals, string unit)
    {
        var number = Show.Number(value, decimals) + unit;
        return value > 0 && number.Any(letter => letter is > '0' and <= '9') ? voice.Say("resize.more", ("figure", number)) : number;
    }
}

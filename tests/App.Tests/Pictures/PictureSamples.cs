using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Rise;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Pictures;

/// <summary>What pictures are drawn of, made by hand, so that they can be tested apart from what is computed.</summary>
internal static class PictureSamples
{
    public static readonly Voice Metric = new(Words.Shipped, MeasureSystem.Metric);
    public static readonly Voice Us = new(Words.Shipped, MeasureSystem.Us);

    public static Temperature Celsius(double celsius) => Temperature.FromCelsius(celsius);

    public static Duration Minutes(double minutes) => Duration.FromMinutes(minutes);

    /// <summary>A share whose heat is what its capacity and temperature say.</summary>
    public static HeatShare Share(string line, double grams, double specific, double celsius, double mixed, bool free = false) => new(
        line is "scald" or "potato" ? HeatGiver.Part : HeatGiver.Ingredient,
        line,
        Mass.FromGrams(grams),
        grams * specific / 1000,
        Celsius(celsius),
        grams * specific / 1000 * (celsius - mixed),
        free);

    public static HeatShare Work(double kilojoules) => new(HeatGiver.Work, null, null, null, null, kilojoules, false);

    /// <summary>The rolls in a kitchen of this air, scald and potato free.</summary>
    public static HeatBalance Heat(double air, double mixed, double free)
    {
        List<HeatShare> shares =
        [
            Share("scald", 180, 3.12, free, mixed, free: true),
            Share("potato", 160, 3.6, free, mixed, free: true),
            Share("egg", 50, 3.3, air, mixed),
            Share("sugar", 30, 1.25, air, mixed),
            Share("instant-yeast", 4, 1.5, air, mixed),
            Share("salt", 7, 0.88, air, mixed),
            Share("butter", 50, 2.3, air, mixed),
            Share("strong-white-flour", 320, 1.8, air, mixed),
        ];
        return new("mix", "dough", Celsius(mixed), [.. shares, Work(-shares.Sum(share => share.Kilojoules))]);
    }

    /// <summary>A rise that follows a square after a slow start, half as long again as to its target.</summary>
    /// <param name="open">Whether one draw in ten never gets there.</param>
    public static RiseCurve Rise(double minutes, double? target, double warm, double room, bool open = false)
    {
        var growth = target ?? 1.8;
        double GrowthAt(double share) => 1 + ((growth - 1) * share * share * (3 - share) / 2);
        var likely = Enumerable.Range(0, 61).Select(i => i * 1.5 / 60)
            .Select(share => new RisePoint(Minutes(share * minutes), GrowthAt(share), Celsius(room + ((warm - room) * Math.Exp(-share)))))
            .ToList();
        var reached = likely.Select(point => new RiseLevel(
            point.Growth,
            new(point.After, point.After * 0.88, open && point.Growth > 1 + ((growth - 1) * 0.9) ? null : point.After * 1.15))).ToList();
        return new("bulk", target, likely, reached);
    }

    public static RehearsedStep Step(StepKind kind, double? minutes, string? cue, bool open = false, params double[] folds) => new()
    {
        Id = kind == StepKind.Proof ? "proof" : "bulk",
        Kind = kind,
        Name = kind == StepKind.Proof ? "Final proof" : "Bulk",
        Component = "dough",
        Basis = Basis.Computed,
        Time = minutes is { } likely ? new(Minutes(likely), Minutes(likely * 0.88), open ? null : Minutes(likely * 1.15)) : null,
        EndTemperature = Celsius(23.4),
        Cue = cue,
        Events = [.. folds.Select(fold => new StepEvent("fold", Estimate<Duration>.Exactly(Minutes(fold)), Minutes(2)))],
        Why = () => Reason.Leaf("nothing", null, ""),
    };

    public static OtherRise Other(string name, double minutes, double? target = 2, bool never = false) =>
        new(name, Rise(minutes, target, 26, 17), never ? null : new(Minutes(minutes), Minutes(minutes * 0.9), Minutes(minutes * 1.1)));

    /// <summary>The rolls as they lie in the bowl.</summary>
    public static Makeup Makeup { get; } = Of(
        ("strong-white-flour", 320, 320, 0, 0, 0, 0),
        ("scald", 180, 80, 100, 0, 0, 0),
        ("potato", 160, 0, 123.92, 1.3, 0.2, 34.58),
        ("egg", 50, 0, 38.075, 0.2, 4.8, 6.925),
        ("sugar", 30, 0, 0, 30, 0, 0),
        ("butter", 50, 0, 8.97, 0, 40.5, 0.53),
        ("salt", 7, 0, 0, 0, 0, 7),
        ("instant-yeast", 4, 0, 0, 0, 0, 4));

    public static Makeup Of(params (string Line, double Mass, double Flour, double? Water, double? Sugar, double? Fat, double? Others)[] rows)
    {
        var made = rows.Select(row => new MakeupRow(row.Line, Mass.FromGrams(row.Mass), Mass.FromGrams(row.Flour), Grams(row.Water), Grams(row.Sugar), Grams(row.Fat), Grams(row.Others))).ToList();
        return new(made, new(
            "",
            Mass.FromGrams(rows.Sum(row => row.Mass)),
            Mass.FromGrams(rows.Sum(row => row.Flour)),
            Sum(rows.Select(row => row.Water)),
            Sum(rows.Select(row => row.Sugar)),
            Sum(rows.Select(row => row.Fat)),
            Sum(rows.Select(row => row.Others))));
    }

    private static Mass? Grams(double? grams) => grams is { } known ? Mass.FromGrams(known) : null;

    private static Mass? Sum(IEnumerable<double?> parts)
    {
        var all = parts.ToList();
        return all.Contains(null) ? null : Mass.FromGrams(all.Sum()!.Value);
    }
}

using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>A dough as mixed, and where it stands: rehearsed with a bulk of which nothing was measured, so that the book's rate counts.</summary>
internal sealed record RisingDough : ICaseModel
{
    private const string Bulk = "bulk";

    /// <summary>The shortest step there is: the dough is there, as warm as the case says, and then it rises.</summary>
    private static readonly Duration Mixing = Limits.Step.Low;

    public Component Dough { get; init; } = null!;

    public int Pieces { get; init; }

    /// <summary>The word for the pieces, which may tell how they are shaped; empty where nobody shaped it.</summary>
    public string Called { get; init; } = "";

    /// <summary>The dough right after mixing.</summary>
    public Temperature Start { get; init; }

    public AirProfile Air { get; init; } = null!;

    public Where Where { get; init; }

    public Cover Cover { get; init; }

    public Vessel Vessel { get; init; } = Vessel.None;

    public Length Altitude { get; init; }

    /// <summary>The volume at which speeds are compared.</summary>
    public double To { get; init; }

    public CaseAnswer Answer(CaseSeries series) => series.Of switch
    {
        var asked when asked == RiseKind.Volume => Each(series, VolumeAfter),
        var asked when asked == RiseKind.TimeToVolume => Each(series, MinutesTo),
        var asked when asked == RiseKind.SpeedByAltitude => Against(series, metres => this with { Altitude = Length.FromMetres(metres) }),
        var asked when asked == RiseKind.SpeedByAir => Against(series, celsius => this with { Air = Constant(celsius) }),
        var asked when asked == RiseKind.SpeedByDough => Against(series, celsius => this with { Air = Constant(celsius), Start = Temperature.FromCelsius(celsius) }),
        var asked when asked == RiseKind.SpeedBySugar => Against(series, share => With(Role.Sugar, share)),
        var asked when asked == RiseKind.SpeedBySalt => Against(series, share => With(Role.Salt, share)),
        var asked when asked == RiseKind.SpeedByYeast => Against(series, share => With(Role.Yeast, share)),
        _ => CaseAnswer.NoModel(series),
    };

    /// <summary>Minutes to a volume in every lane; null when the rehearsal cannot tell.</summary>
    private double[]? MinutesTo(double volume) =>
        Limits.Growth.Holds(volume) ? Rehearsed(new StepEnd.AtGrowth(volume))?.Minutes?.Values : null;

    private double[]? VolumeAfter(double minutes) => Duration.FromMinutes(minutes) is var time && Limits.Step.Holds(time)
        ? Rehearsed(new StepEnd.AfterTime(time))?.Growth?.Values
        : minutes == 0 ? [1] : null;

    private StepOutcome? Rehearsed(StepEnd end)
    {
        var rises = CaseRecipe.Step(Bulk, StepKind.Bulk, Dough) with { End = end, Where = Where, Cover = Cover, Vessel = Vessel };
        var mixed = CaseRecipe.Step(CaseRecipe.Mix, StepKind.Mix, Dough) with { End = new StepEnd.AfterTime(Mixing), Measured = new(null, Start, null, 1), Vessel = Vessel.None };
        var home = new Kitchen { Air = Later(Air, Mixing), Altitude = Altitude, Fridge = Air.At(Duration.Zero), Tap = Air.At(Duration.Zero), ProofingPlace = Where == Where.ProofingPlace ? Air.At(Duration.Zero) : null };
        var isShaped = Pieces > 1 || Called.Length > 0;
        var make = isShaped ? new Make(Pieces, Called.Length > 0 ? Called : "pieces", Mass.FromGrams(Dough.Lines.Sum(line => line.Mass?.Grams ?? 0)) / Pieces) : null;
        Step[] steps = isShaped ? [mixed, CaseRecipe.Step("shape", StepKind.Shape, Dough) with { End = new StepEnd.AfterTime(Mixing) }, rises] : [mixed, rises];
        return Rehearser.Rehearse(CaseRecipe.Of(Dough, home, steps, make), Larder.Shipped).Kept.Find(Bulk);
    }

    private RisingDough? With(Role role, double percentOfFlour)
    {
        var lines = Formula.Balance(CaseRecipe.Of(Dough, new() { Air = Air }, []), Larder.Shipped).Components[0].Lines;
        var flour = lines.Where(line => line.Role == Role.Flour).Sum(line => line.Mass.Grams);
        var changed = lines.Where(line => line.Role == role).Select(line => line.Id).ToArray();
        return changed is not [var id] ? null : this with
        {
            Dough = Dough with { Lines = [.. Dough.Lines.Select(line => line.Id == id ? line with { Mass = Mass.FromGrams(flour * percentOfFlour / 100) } : line)] },
        };
    }

    /// <summary>How many times as fast as at the reference, lane by lane: what all doughs share is not in the range.</summary>
    private CaseAnswer Against(CaseSeries series, Func<double, RisingDough?> at)
    {
        var reference = at(series.Reference!.Value)?.MinutesTo(To);
        return reference is null || !double.IsFinite(reference[0])
            ? Unknown(series)
            : Each(series, place => at(place)?.MinutesTo(To) is { } minutes ? [.. reference.Zip(minutes, Ratio)] : null);
    }

    /// <summary>A lane in which neither is reached knows no ratio; the likely one stands in for it.</summary>
    private static double Ratio(double reference, double minutes) => double.IsFinite(minutes) ? reference / minutes : 0;

    private static CaseAnswer Each(CaseSeries series, Func<double, double[]?> at)
    {
        var answers = series.Points.Select(point => at(point.Place)).ToArray();
        return answers.All(answer => answer is not null) ? CaseAnswer.Of(answers!) : Unknown(series);
    }

    private static CaseAnswer Unknown(CaseSeries series) => CaseAnswer.Refused(CaseFaults.NotComputed, Grade.Warning, ("quantity", series.Quantity));

    private static AirProfile Constant(double celsius) => AirProfile.Constant(Temperature.FromCelsius(celsius));

    private static AirProfile Later(AirProfile air, Duration by) =>
        AirProfile.Of(air.Knots.Select(knot => knot.From == Duration.Zero ? knot : (knot.From + by, knot.Air)));
}

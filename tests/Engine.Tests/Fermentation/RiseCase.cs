using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Fermentation;

/// <summary>A dough and a kitchen in plain numbers, one lane, for the checks that follow.</summary>
internal sealed record RiseCase
{
    public const double SeaLevel = 101325;

    public double Yeast { get; init; } = 1;

    public double Water { get; init; } = 65;

    public double Salt { get; init; } = 2;

    public double Sugar { get; init; }

    public double Scale { get; init; } = 1;

    public double Pascals { get; init; } = SeaLevel;

    /// <summary>Ripe sourdough in place of the yeast, g; null for a dough of yeast.</summary>
    public double? Sour { get; init; }

    public double StepMinutes { get; init; } = 2;

    public RisePriors Priors { get; init; } = WithoutGrowth;

    public Func<double, double> CelsiusAt { get; init; } = _ => 25;

    public double Hours { get; init; } = 100;

    public RiseHistory History => RiseHistory.Of(
        at => Temperature.FromCelsius(CelsiusAt(at.Minutes)), 1, Duration.FromHours(Hours), Duration.FromMinutes(StepMinutes));

    public RiseParameters Parameters => RiseParameters.Central(1, Priors);

    public RiseDough Dough => Sour is { } ripe ? OfSour(ripe) : OfYeast;

    private RiseDough OfSour(double ripe)
    {
        var mass = 100 + Water + Salt + Sugar;
        var culture = Culture.In(Mass.FromGrams(mass), Mass.FromGrams(100), Parameters);
        return OfYeast with { Culture = culture, FreshYeastGrams = [culture.FreshAtMost[0] * ripe / mass] };
    }

    private RiseDough OfYeast => RiseDough.Of(
        new()
        {
            Flour = Mass.FromGrams(100),
            Water = Mass.FromGrams(Water),
            Salt = Mass.FromGrams(Salt),
            Sugar = Mass.FromGrams(Sugar),
            FreshYeast = Mass.FromGrams(Yeast),
        },
        Parameters);

    public RiseState Start => new(Dough, Parameters, [Scale], [Pascals], History.StartCelsius);

    /// <summary>Yeast that does not multiply, as most of the tabulated values were computed.</summary>
    public static RisePriors WithoutGrowth { get; } = new() { GrowthRate = new("none", "1/h", 0, 0, PriorLaw.Normal, "") };

    public double MinutesTo(double growth, RiseFolds? folds = null) => Rise.TimeToGrowth(Start, History, growth, folds)[0];

    public double GrowthAt(double minutes) => Rise.GrowthAfter(Start, History, [minutes])[0];

    /// <summary>The scale at which this dough doubles in so many minutes at home.</summary>
    public double AnchoredAt(double minutes, RiseFolds? folds = null) =>
        Rise.Anchor(Dough, Parameters, [Pascals], History, [minutes], 2, folds ?? RiseFolds.AtMinutes(1)).Scale[0];
}

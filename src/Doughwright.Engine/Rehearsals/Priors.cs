using System.Collections.Concurrent;
using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals;

/// <summary>
/// The uncertain parameters of a rehearsal, drawn once and the same in the home run and the run elsewhere: one lane is one state of the
/// world. Every parameter has a quasi-random dimension of its own.
/// </summary>
internal sealed class Priors
{
    // The first sixteen dimensions stay apart at 32 lanes; what moves the answers most has one of these. The rest share the others.
    private const int ReadingDimension = 0;
    private const int SecondReadingDimension = 15;
    private static readonly int[] RiseDimensions = [5, 6, 7, 8, 16, 9, 10, 17, 11, 18, 19, 20, 21, 12, 13];

    private static readonly ConcurrentDictionary<(int Lanes, RisePriors Rise), Priors> Drawn = new();

    private Priors(int lanes, RisePriors rise)
    {
        Lanes = lanes;
        Handling = Normal(1, lanes);
        Outer = Normal(2, lanes);
        Elsewhere = Outer.Map(z => Elementary.Exp(0.10 * z));
        BakeReading = Normal(24, lanes).Map(z => Elementary.Exp(0.06 * z));
        BakeEstimate = Normal(24, lanes).Map(z => Elementary.Exp(0.15 * z));
        OvenBias = Draw(BakeLaws.OvenBias, 25, lanes);
        Core = Normal(3, lanes);
        Melting = Draw(new("melting heat of butterfat", "J/g", FatMelting.Butter.JoulesPerGram, FatMelting.Butter.Sd, PriorLaw.Normal, "butter-melting"), 14, lanes);
        Transfer = Draw(BakeLaws.Transfer, 4, lanes);
        Effectiveness = Draw(BakeLaws.Effectiveness, 22, lanes);
        Skin = Draw(BakeLaws.Skin, 26, lanes);
        BakeLag = Draw(BakeLaws.Lag, 27, lanes);
        RackExchange = Outer.Map(RackLaws.Exchange.At);
        Preheat = Draw(new("preheating, against its default", "1", 1, 0.20, PriorLaw.LogNormal, "oven-preheat"), 23, lanes);
        var rows = RiseDimensions.Select(dimension => Draws.Normal(dimension, lanes)).ToArray();
        Rise = RiseParameters.Draw(rise, lanes, dimension => rows[dimension]);
    }

    /// <summary>The draws for so many lanes. They never change, so they are made once.</summary>
    public static Priors For(int lanes, RisePriors rise) => Drawn.GetOrAdd((lanes, rise), key => new(key.Lanes, key.Rise));

    public int Lanes { get; }

    /// <summary>Standard normal draws for the handling rise, whose mean and spread depend on the way of mixing.</summary>
    public PerLane Handling { get; }

    /// <summary>Standard normal draws for outer coefficients, whose mean and spread depend on cover and place.</summary>
    public PerLane Outer { get; }

    /// <summary>
    /// How much more or less the air moves in another kitchen than in the author's, as a factor on a coefficient that was solved at home.
    /// Source: elsewhere-air.
    /// </summary>
    public PerLane Elsewhere { get; }

    /// <summary>Error of judging a bake by its colour, as a factor on the time. Source: bake-reading.</summary>
    public PerLane BakeReading { get; }

    /// <summary>Error of a bake's minutes that the author estimated and nobody timed. Source: estimated-times.</summary>
    public PerLane BakeEstimate { get; }

    /// <summary>How much later a core is there than along one radius, where no bake at home says so.</summary>
    public PerLane BakeLag { get; }

    /// <summary>How far an oven other than the author's is off its dial, K.</summary>
    public PerLane OvenBias { get; }

    public PerLane Melting { get; }

    /// <summary>What an oven gives where no bake was measured, against its default.</summary>
    public PerLane Transfer { get; }

    /// <summary>Share of free diffusion that vapour finds in gas cells.</summary>
    public PerLane Effectiveness { get; }

    /// <summary>Resistance of the skin to vapour, s/m.</summary>
    public PerLane Skin { get; }

    /// <summary>Standard normal draws for the core that the author's bake reached.</summary>
    public PerLane Core { get; }

    /// <summary>What a room takes from a piece out of the oven, against its default.</summary>
    public PerLane RackExchange { get; }

    public PerLane Preheat { get; }

    public RiseParameters Rise { get; }

    /// <summary>
    /// Error of reading a rise by eye, as a factor on the time: one per dough, so that a bulk read late and its proof read late go together.
    /// Source: rise-reading.
    /// </summary>
    public PerLane ReadingError(int dough) => Normal(dough == 0 ? ReadingDimension : SecondReadingDimension, Lanes).Map(z => Elementary.Exp(0.10 * z));

    /// <summary>
    /// The same for a rise that nobody timed, where the author wrote "about an hour, by its cue": the estimate of a person who knows such doughs.
    /// Source: estimated-times.
    /// </summary>
    public PerLane EstimateError(int dough) => ReadingError(dough).Map(factor => Elementary.Exp(2.5 * Elementary.Log(factor)));

    private static PerLane Normal(int dimension, int lanes) => new(Draws.Normal(dimension, lanes));

    private static PerLane Draw(Prior prior, int dimension, int lanes) => Normal(dimension, lanes).Map(prior.At);
}

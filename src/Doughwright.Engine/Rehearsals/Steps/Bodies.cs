using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>What a portion is to the air around it: a body with an outside.</summary>
internal static class Bodies
{
    /// <summary>Share of air in a dough after mixing. Source: dough-density.</summary>
    public const double AirAfterMixing = 0.08;

    /// <summary>Hotter than this at the start, a covered body loses heat faster. Source: hot-surfaces.</summary>
    private const double HotFromCelsius = 50;

    private const int Cells = 16;

    private const double WetOfBowl = 1.0 / 3;

    private static readonly Temperature PropertiesAt = Temperature.FromCelsius(30);

    /// <summary>The portion as a body in the step's vessel; null when its composition is not known.</summary>
    public static Body? Of(Step step, Portion portion)
    {
        if (ThermalProperties.Of(portion.Composition, PropertiesAt) is not { } known)
        {
            return null;
        }

        // The heat a portion holds is that of its lines, handbook figures included; the body must hold the same.
        var properties = known with { SpecificHeat = SpecificHeat.FromJoulesPerGramKelvin(portion.JoulesPerKelvin / portion.Mass.Grams) };
        if (step.Kind is StepKind.Bulk or StepKind.Shape or StepKind.Proof or StepKind.Rest)
        {
            properties = properties.WithGas(AirAfterMixing);
        }

        var vessel = DefaultHeats.JoulesPerKelvinOf(step.Vessel) ?? 0;
        // What lies spread out is one layer, however many pieces are cut from it; a piece on a tray meets little of the tray.
        var pieces = step.Depth is null ? portion.Pieces : 1;
        var form = PieceOf.In(step, portion, Body.VolumeOf(portion.Mass / pieces, properties));
        var body = Body.Of(form, properties, pieces > 1 ? 0 : vessel);
        return portion.MeltingFat > Mass.Zero
            ? body with { Melting = FatMelting.Butter, MeltingFatShare = portion.MeltingFat / portion.Mass }
            : body with { Faces = FacesOf(step, form.Heat.Dimensions == 1 && step.Depth is not null) };
    }

    /// <summary>
    /// What cools uncovered in the room is wet and evaporates: a third of the outside of what is in a bowl, all of the upper side of what lies spread
    /// out, with its tray below. Source: lewis-evaporation.
    /// </summary>
    /// <param name="isLayer">Spread out.</param>
    /// <param name="hasBack">A layer that gives off heat below too.</param>
    public static OpenFaces? FacesOf(Step step, bool isLayer, bool hasBack = true) => step is { Cover: Cover.Open, Where: Where.Room, Kind: StepKind.Cool or StepKind.Scald }
        ? isLayer
            ? new(1, OpenFaces.StillAir, OpenFaces.Room, hasBack)
            : new(WetOfBowl, OpenFaces.StillAir, OpenFaces.Room, HasBack: false)
        : null;

    /// <summary>Room that one piece takes when it has just been shaped, m³; null when its composition is not known or there is nothing of it.</summary>
    public static double? VolumeOfPiece(Portion portion) =>
        portion.Mass > Mass.Zero && ThermalProperties.Of(portion.Composition, PropertiesAt) is { } known
            ? Body.VolumeOf(portion.Mass / portion.Pieces, known.WithGas(AirAfterMixing))
            : null;

    /// <summary>How readily the step's surroundings take heat, before anything was measured.</summary>
    /// <param name="faces">Of the body: where it is wet, evaporation is worked out beside the coefficient and not in it.</param>
    public static ExchangeCoefficient ExchangeOf(Step step, double startCelsius, double endCelsius, double airCelsius, OpenFaces? faces = null) => step switch
    {
        _ when faces is not null => startCelsius > HotFromCelsius ? ExchangeCoefficient.CoveredHot : ExchangeCoefficient.Covered,
        { Where: Where.Fridge } => ExchangeCoefficient.StillFridge,
        { Where: Where.Bath } => ExchangeCoefficient.WaterBath,
        { Cover: Cover.Open, Kind: StepKind.Cool or StepKind.Scald } => ExchangeCoefficient.Open(
            Temperature.FromCelsius(startCelsius),
            Temperature.FromCelsius(endCelsius),
            Temperature.FromCelsius(airCelsius),
            step.Depth is null ? WetOfBowl : 0.5),
        _ when startCelsius > HotFromCelsius => ExchangeCoefficient.CoveredHot,
        _ => ExchangeCoefficient.Covered,
    };

    /// <summary>A coefficient in every lane.</summary>
    public static PerLane Draw(ExchangeCoefficient exchange, Priors priors) =>
        priors.Outer.Map(z => exchange.WattsPerSquareMetreKelvin * Numerics.Elementary.Exp(exchange.SdLn * z));

    /// <summary>Starts following a body that drifts towards the air.</summary>
    public static ConductionRun Drift(StepInput input, Body body, PerLane start, Duration step) =>
        Begin(body, DriftLanes(input, body, start), step);

    /// <summary>The same in the central lane alone.</summary>
    public static ConductionRun DriftLikely(StepInput input, Body body, PerLane start, Duration step) =>
        Begin(body, DriftLanes(input, body, start).Central, step);

    public static ConductionRun Begin(Body body, CoolingLanes lanes, Duration step) =>
        ConductionRun.Start(Cooling.GridOf(body, Cells), lanes.In(body), step);

    private static CoolingLanes DriftLanes(StepInput input, Body body, PerLane start)
    {
        var exchange = input.Around?.Exchange
            ?? Draw(ExchangeOf(input.Step, start.Central, start.Central, input.Air.At(Duration.Zero).Celsius, body.Faces), input.Stage.Priors);
        return LanesOf(body, start, exchange, input.Stage.Priors);
    }

    public static CoolingLanes LanesOf(Body body, PerLane start, PerLane coefficient, Priors priors) => new(start.Values, coefficient.Values)
    {
        MeltingScale = body.Melting is { } melting ? priors.Melting.Map(heat => heat / melting.JoulesPerGram).Values : null,
    };
}

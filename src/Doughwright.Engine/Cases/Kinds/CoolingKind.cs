using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;
using Doughwright.Engine.Shapes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>A body that cools or warms towards the air: a piece, a bowl, a layer on a tray, a long roll.</summary>
internal sealed class CoolingKind(string name) : CaseKind
{
    private const string ShapeKey = "shape";
    private const string Mass = "mass";
    private const string Diameter = "diameter";
    private const string Thickness = "thickness";
    private const string FacesKey = "faces";
    private const string Long = "length";
    private const string Width = "width";
    private const string Height = "height";
    private const string Gas = "gas";
    private const string Start = "start";
    private const string Air = "air";
    private const string Place = "where";
    private const string CoverKey = "cover";
    private const string VesselKey = "vessel";
    private const string Coefficient = "coefficient";

    public static CaseQuantity Core { get; } = new("core temperature", Dimension.Time, Dimension.Temperature);

    public static CaseQuantity Mean { get; } = new("mean temperature", Dimension.Time, Dimension.Temperature);

    public static CaseQuantity Surface { get; } = new("surface temperature", Dimension.Time, Dimension.Temperature);

    public static CaseQuantity TimeToCore { get; } = new("time to core temperature", Dimension.Temperature, Dimension.Time);

    public static CaseQuantity TimeToMean { get; } = new("time to mean temperature", Dimension.Temperature, Dimension.Time);

    public override string Name => name;

    public override IReadOnlyList<string> Keys =>
        [ShapeKey, Mass, Diameter, Thickness, FacesKey, Long, Width, Height, .. CaseMatter.Keys, Gas, Start, Air, Place, CoverKey, VesselKey, Coefficient];

    public override IReadOnlyList<CaseQuantity> Quantities => [Core, Mean, Surface, TimeToCore, TimeToMean];

    public override ICaseModel? Read(CaseConditions conditions)
    {
        var matter = CaseMatter.Read(conditions);
        var vessel = conditions.MayVessel(VesselKey);
        var start = conditions.Need(Start, Dimension.Temperature);
        var air = conditions.NeedAir(Air);
        var gas = conditions.May(Gas, Dimension.Gas) ?? (matter is { HoldsFlour: true } ? 100 * Bodies.AirAfterMixing : 0);
        var properties = matter?.Properties.WithGas(gas / 100);
        var body = ReadBody(conditions, properties, DefaultHeats.JoulesPerKelvinOf(vessel) ?? 0);
        var step = CaseRecipe.Step(name, StepKind.Cool, new(name, name, ComponentKind.Dough, [], Position.None)) with
        {
            Where = conditions.MayBe<Where>(Place) ?? Where.Room,
            Cover = conditions.MayBe<Cover>(CoverKey) ?? Cover.Covered,
            Depth = body is { Dimensions: 1 } ? body.Size : null,
        };
        var coefficient = conditions.May(Coefficient, Dimension.Coefficient);
        return body is null || start is null || air is null || matter is null
            ? null
            : new CoolingBody(
                matter.MeltingFatShare > 0 ? body with { Melting = FatMelting.Butter, MeltingFatShare = matter.MeltingFatShare }
                    : body with { Faces = coefficient is null ? Bodies.FacesOf(step, IsLayer(conditions), HasBack(conditions)) : null },
                step,
                start.Value,
                air,
                coefficient);
    }

    private static bool IsLayer(CaseConditions conditions) => conditions.MayWords(ShapeKey) == EnumWords<Shape>.Of(Shape.Layer);

    private static bool HasBack(CaseConditions conditions) => conditions.MayWords(FacesKey) != EnumWords<Faces>.Of(Faces.One);

    private static Body? ReadBody(CaseConditions conditions, ThermalProperties? properties, double vesselJoules)
    {
        var shape = conditions.NeedWord<Shape>(ShapeKey);
        var mass = conditions.May(Mass, Dimension.Mass);
        var faces = conditions.MayBe<Faces>(FacesKey) ?? Faces.Both;
        double? Side(string key) => conditions.Need(key, Dimension.Size);
        switch (shape)
        {
            case Shape.Ball when !conditions.Has(Mass) && !conditions.Has(Diameter):
                conditions.TellOneOf(Mass, Diameter);
                return null;
            case Shape.Ball when conditions.Clash(Mass, Diameter):
                return null;
            case Shape.Ball when conditions.Has(Diameter):
                return Side(Diameter) is { } across ? Of(properties, Math.PI * across * across, Math.PI * across * across * across / 6, new HeatWay(3, Half(across))) : null;
            case Shape.Ball:
                return properties is null || mass is null ? null : Body.Piece(Engine.Quantities.Mass.FromGrams(mass.Value), properties);
            case Shape.Bowl:
                return conditions.Need(Mass, Dimension.Mass) is { } grams && properties is not null ? Body.InBowl(Engine.Quantities.Mass.FromGrams(grams), properties, vesselJoules) : null;
            case Shape.Roll:
                return Side(Diameter) is { } wide ? Of(properties, Math.PI * wide, Math.PI * wide * wide / 4, new HeatWay(2, Half(wide))) : null;
            case Shape.Cylinder:
                return (Side(Diameter), Side(Height)) is ({ } round, { } high)
                    ? Of(properties, (Math.PI * round * high) + (Math.PI * round * round / 2), Math.PI * round * round * high / 4, new(2, Half(round)), new(1, Half(high)))
                    : null;
            case Shape.Brick:
                return (Side(Long), Side(Width), Side(Height)) is ({ } one, { } two, { } three)
                    ? Of(properties, 2 * ((one * two) + (two * three) + (three * one)), one * two * three, new(1, Half(one)), new(1, Half(two)), new(1, Half(three)))
                    : null;
            case Shape.Layer:
                return Side(Thickness) is { } thick && properties is not null ? Layer(thick, faces, mass, vesselJoules, properties) : null;
            default:
                return null;
        }
    }

    /// <summary>As heat meets it, through one way or several at right angles.</summary>
    private static Body? Of(ThermalProperties? properties, double squareMetres, double cubicMetres, params HeatWay[] ways)
    {
        var form = HeatForm.Of(ways, squareMetres, cubicMetres);
        return properties is null ? null : new(form.Dimensions, form.Size, squareMetres, cubicMetres, 0, properties);
    }

    /// <summary>A square metre of it, unless its mass says how much there is for the vessel to warm.</summary>
    private static Body Layer(double metres, Faces faces, double? grams, double vesselJoules, ThermalProperties properties) => (faces, grams) switch
    {
        (Faces.Both, { } mass) => Body.Spread(Engine.Quantities.Mass.FromGrams(mass), properties, Length.FromMetres(metres), vesselJoules),
        (Faces.Both, null) => new(1, Half(metres), 2, metres, 0, properties),
        _ => new(1, Length.FromMetres(metres), 1, metres, 0, properties),
    };

    private static Length Half(double metres) => Length.FromMetres(metres / 2);

    private enum Shape
    {
        Ball,
        Bowl,
        Layer,
        Roll,
        Cylinder,
        Brick,
    }

    private enum Faces
    {
        Both,
        One,
    }
}

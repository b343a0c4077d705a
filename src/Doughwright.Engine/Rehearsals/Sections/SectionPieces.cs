using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Baking.Sections;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;
using Doughwright.Engine.Shapes;

namespace Doughwright.Engine.Rehearsals.Sections;

/// <summary>A risen portion on its way into the oven as a cylinder with a boundary of its own on each face. Source: house-bake-section.</summary>
internal static class SectionPieces
{
    /// <summary>Whether the axis lies: a stick, a ring, what is in a long tin.</summary>
    public static bool Lies(PieceForm form) =>
        form.Shape is PieceShape.Batard or PieceShape.Baguette or PieceShape.Ring || (form.Shape == PieceShape.TinLoaf && form.Long != form.Wide);

    /// <summary>Null where the composition is not known well enough.</summary>
    /// <param name="form">Of one piece, risen.</param>
    /// <param name="start">°C.</param>
    /// <param name="on">What it is baked on: a rack leaves it open all round.</param>
    public static BakingPiece? Of(Portion portion, PieceForm form, double start, RadialOven oven, BakedOn on, Stage stage)
    {
        if (ThermalProperties.Of(portion.Composition, Temperature.FromCelsius(25)) is not { } properties || SolidsOf(portion.Composition) is not { } solids)
        {
            return null;
        }

        var open = SectionOven.Face(oven);
        OvenFace Face(double share) => open with { Open = share };
        var none = open.Scaled(0) with { Open = 0 };
        var (below, ofStick) = on == BakedOn.Rack ? (1.0, 1.0) : (0.0, 1 - UnderSide.OfStick);
        var (radius, top, side, bottom) = form switch
        {
            { Shape: PieceShape.Ball or PieceShape.Boule } => (RisenForm.DomeRadius(form), Face(1), Face(1), Face(below)),
            { Shape: PieceShape.Batard or PieceShape.Baguette } => (form.Wide.Metres / 2, Face(1), Face(ofStick), Face(1)),
            { Shape: PieceShape.Ring } => (form.High.Metres / 2, none, Face(ofStick), none),
            { Shape: PieceShape.TinLoaf } when form.Long != form.Wide => (
                Math.Sqrt(form.Wide.Metres * form.High.Metres / Math.PI), Face(0), Face(form.Wide.Metres / (2 * (form.Wide + form.High).Metres)), Face(0)),
            { Shape: PieceShape.TinLoaf } => (form.Long.Metres / 2, Face(1), Face(0), Face(0)),
            { Shape: PieceShape.Sheet } => (form.Long.Metres / 2, Face(1), none, Face(0)),
            _ => (form.Long.Metres / 2, Face(1), Face(1), Face(below)),
        };
        // The volume holds, whatever the proportions come to.
        var height = form.CubicMetres / (Math.PI * radius * radius);
        return new(
            Length.FromMetres(radius),
            Length.FromMetres(height),
            portion.Mass / portion.Pieces,
            portion.Composition.Water!.Value / (100 - portion.Composition.Water.Value),
            solids,
            Temperature.FromCelsius(start),
            stage.Pressure,
            properties.Density,
            properties.Conductivity)
        {
            Top = top,
            Side = side,
            Bottom = bottom,
            Hearth = Lies(form) ? null : SectionOven.Under(oven),
        };
    }

    private static SolidsHeat? SolidsOf(Composition composition)
    {
        if (composition is not { Water: { } water, Protein: { } protein, Fat: { } fat, Carbohydrate: { } carbohydrate, Fibre: { } fibre, Ash: { } ash })
        {
            return null;
        }

        var dry = protein + fat + carbohydrate + ash;
        return dry > 0 && water > 0
            ? SolidsHeat.Of(
                (FoodConstituent.Protein, protein / dry),
                (FoodConstituent.Fat, fat / dry),
                (FoodConstituent.Carbohydrate, (carbohydrate - fibre) / dry),
                (FoodConstituent.Fibre, fibre / dry),
                (FoodConstituent.Ash, ash / dry))
            : null;
    }
}

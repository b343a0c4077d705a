using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Baking.Sections;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Sections;

/// <summary>The oven of a kitchen as the faces of a piece over its section meet it: what the same oven is along one radius, face by face.</summary>
/// <remarks>Steam, a lid and a deck are not carried over a section; a stone not under what lies on its side, whose under face is no face of its own there.</remarks>
internal static class SectionOven
{
    /// <summary>Where it does not, the bake along one radius stands, which carries them.</summary>
    public static bool Carries(Step step, Stage stage) =>
        step is { Steam: null, LidOff: null } && stage.ModeOf(step.Oven!) != Kitchens.OvenMode.Deck;

    /// <summary>A face in an oven, open all over.</summary>
    public static OvenFace Face(RadialOven oven) => new(oven.Convective, 0, seconds => Air(oven, seconds), seconds => Walls(oven, seconds), 1, OvenFace.KitchenVapour)
    {
        Shine = oven.Radiative,
    };

    /// <summary>What the piece stands on, if that is hot.</summary>
    public static UnderHearth? Under(RadialOven oven) => oven.Hearth is { } slab ? new(slab, seconds => Walls(oven, seconds)) : null;

    private static double Walls(RadialOven oven, double seconds) => oven.Change is { } change ? change.At(oven.Celsius, seconds) : oven.Celsius;

    private static double Air(RadialOven oven, double seconds) => Walls(oven, seconds) - (oven.DoorDrop * Elementary.Exp(-seconds / oven.DoorSeconds));
}

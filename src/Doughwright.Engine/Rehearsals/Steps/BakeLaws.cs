using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Baking.Sections;
using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Kitchens;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>What of the laws of baking is not known for sure, one set for whatever is baked, along one radius as over a section.</summary>
internal static class BakeLaws
{
    /// <summary>Share of free diffusion that vapour finds in the gas cells. From 0.42 to 0.80 was found to serve one small loaf.</summary>
    public static Prior Effectiveness { get; } = new("share of free diffusion that vapour finds in gas cells", "1", CrumbLaws.Standard.Effectiveness, 0.18, PriorLaw.LogNormal, "house-bake-lanes");

    /// <summary>Resistance of the skin to vapour beside the air's.</summary>
    public static Prior Skin { get; } = new("resistance of the skin to vapour", "s/m", CrumbLaws.Standard.SkinResistance, 0.25, PriorLaw.LogNormal, "house-bake-lanes");

    /// <summary>All that an oven gives, against what it is taken to give: oven, tray, neighbours and the piece's shape together.</summary>
    public static Prior Transfer { get; } = new("heat from the oven, against its default", "1", 1, 0.40, PriorLaw.LogNormal, "oven-coefficient");

    /// <summary>
    /// How much later or sooner a core is there than along one radius, which forms in two dimensions miss by a fifth to a third, or a piece whose core
    /// nobody measured comes out, for its crust. A choice.
    /// </summary>
    public static Prior Lag { get; } = new("time of a core, against that along one radius", "1", 1, 0.25, PriorLaw.LogNormal, "house-bake-lanes");

    /// <summary>How far an oven is off its dial, K.</summary>
    public static Prior OvenBias { get; } = new("oven off its dial", "K", 0, 8, PriorLaw.Normal, "oven-bias");

    /// <summary>An oven by its kind, nothing else said of it.</summary>
    /// <remarks>
    /// Over all faces of a piece on its tray: air that hardly moves gives 4.5 W/(m² K), a fan 8; walls shine on it with 0.45 of what black
    /// walls all round would. With 12 and 15 in all at a surface of 100 °C, the customary pairs of dials bake alike. Source: oven-coefficient.
    /// </remarks>
    public static RadialOven Oven(OvenMode mode, double celsius) => Ovens.Of(mode, celsius);

    /// <summary>A piece out of the oven on a rack: what still air and a room give. Source: hot-surfaces.</summary>
    public static RadialOven Room(double celsius) => new(celsius, RackLaws.StillAir, RackLaws.Crust);
}

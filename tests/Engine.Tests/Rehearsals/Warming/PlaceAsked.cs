using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Warming;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals.Warming;

/// <summary>The potato rolls in rooms of their own, and places asked for their dough.</summary>
internal static class PlaceAsked
{
    public static readonly Rehearsal Home = In(null);
    public static readonly Rehearsal Cold = In(17);

    public static Temperature C(double celsius) => Temperature.FromCelsius(celsius);

    public static Rehearsal In(double? air) => Rehearser.Rehearse(
        RecipeText.Read(Texts.PotatoRolls).Recipe!,
        Larder.Shipped,
        air is { } celsius ? new() { Kitchen = new Kitchen { Air = AirProfile.Constant(C(celsius)) } } : Request.Home);

    public static PlaceAdvice Advice(Rehearsal rehearsal, double target, string step = "bulk", PlaceWish? wish = null) =>
        Places.Advise(rehearsal, step, C(target), wish);
}

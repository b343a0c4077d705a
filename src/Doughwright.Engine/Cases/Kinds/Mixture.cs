using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>Lines in a bowl, rehearsed as one step that nobody has measured.</summary>
internal sealed record Mixture(Component Part, Kitchen Kitchen, Step Step) : ICaseModel
{
    public const string Lines = "lines";
    public const string Air = "air";
    public const string Tap = "tap";
    public const string Fridge = "fridge";
    public const string Altitude = "altitude";
    public const string Bowl = "bowl";
    public const string Way = "way";

    public static Mixture? Read(CaseConditions conditions, ComponentKind part, StepKind kind)
    {
        var lines = conditions.NeedLines(Lines, part);
        var air = conditions.NeedAir(Air);
        var (tap, fridge) = (conditions.May(Tap, Dimension.Temperature), conditions.May(Fridge, Dimension.Temperature));
        var altitude = conditions.May(Altitude, Dimension.Altitude) ?? 0;
        var bowl = conditions.MayVessel(Bowl) ?? Vessel.None;
        var way = kind == StepKind.Mix ? conditions.MayWay(Way) : null;
        if (lines is null || air is null)
        {
            return null;
        }

        var kitchen = new Kitchen { Air = air, Altitude = Length.FromMetres(altitude) };
        kitchen = kitchen with
        {
            Tap = tap is { } water ? Temperature.FromCelsius(water) : kitchen.Tap,
            Fridge = fridge is { } cold ? Temperature.FromCelsius(cold) : kitchen.Fridge,
        };
        return new(lines, kitchen, CaseRecipe.Step(CaseRecipe.Mix, kind, lines) with { Vessel = bowl, Way = way, End = new StepEnd.AfterTime(Limits.Step.Low) });
    }

    public CaseAnswer Answer(CaseSeries series) =>
        Rehearser.Rehearse(CaseRecipe.Of(Part, Kitchen, [Step]), Larder.Shipped).Kept.Find(Step.Id)?.MixedCelsius is { } mixed
            ? CaseAnswer.Each(series, _ => mixed.Values)
            : CaseAnswer.Refused(CaseFaults.NotComputed, Grade.Warning, ("quantity", series.Quantity));
}

using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>The oven of a case, as a rehearsal would have it.</summary>
/// <param name="IsStated">The source states what it gives, so that this is not uncertain.</param>
/// <param name="Shut">Share of the piece's surface that is shut to vapour.</param>
internal sealed record CaseOven(RadialOven Oven, bool IsStated, double Shut)
{
    private const string Celsius = "oven";
    private const string Then = "then";
    private const string Mode = "mode";
    private const string Coefficient = "coefficient";
    private const string On = "on";
    private const string Steam = "steam";
    private const string Lid = "lid";

    public static IReadOnlyList<string> Keys { get; } =
        [Celsius, Then, Mode, KitchenSection.OvenRuns, KitchenSection.OvenRecovers, KitchenSection.OvenSteam, KitchenSection.Hearth, Coefficient, On, Steam, Lid];

    public static CaseOven? Read(CaseConditions conditions, double? under, Pressure air)
    {
        var celsius = conditions.Need(Celsius, Dimension.Temperature);
        var then = conditions.MayRead(Then, OvenGrammar.Then);
        var mode = conditions.MayBe<OvenMode>(Mode) ?? OvenMode.Fan;
        var traits = OvenTraits.Usual with
        {
            OffDial = conditions.MayReadValue(KitchenSection.OvenRuns, OvenGrammar.Runs),
            RecoversIn = conditions.MayReadValue(KitchenSection.OvenRecovers, words => words.Duration(Limits.OvenRecovers)),
            Steam = conditions.MayBe<OvenSteam>(KitchenSection.OvenSteam) ?? OvenSteam.Pan,
            Hearth = conditions.MayRead(KitchenSection.Hearth, OvenGrammar.Hearth),
        };
        var stated = conditions.May(Coefficient, Dimension.Coefficient);
        var on = conditions.MayBe<Standing>(On) ?? Standing.Tray;
        var steam = conditions.MayReadValue(Steam, OvenGrammar.Steam);
        var lid = conditions.MayReadValue(Lid, OvenGrammar.Lid);
        var hearth = Ovens.HearthOf(mode, traits);
        if (on == Standing.Stone && hearth is null)
        {
            conditions.Tell(CaseFaults.StoneNotSaid, On, ("key", KitchenSection.Hearth));
            return null;
        }

        if (steam is not null && traits.Steam == OvenSteam.None)
        {
            conditions.Tell(CaseFaults.NotTogether, Steam, ("key", Steam), ("others", KitchenSection.OvenSteam));
            return null;
        }

        if (celsius is not { } dial)
        {
            return null;
        }

        var inside = dial + traits.OffDialTaken.Kelvins;
        var oven = stated is { } coefficient ? new RadialOven(inside, coefficient, 0) : Ovens.Of(mode, traits, inside);
        var lies = under ?? UnderSide.Usual;
        return new(
            oven with
            {
                Change = then is null ? null : Ovens.Change(mode, traits, then.After, then.Dial.Celsius - dial),
                Steam = steam is null ? oven.Steam : Ovens.VapourOf(traits.Steam, air),
                SteamSeconds = steam?.Seconds ?? 0,
                Hearth = on == Standing.Stone ? Ovens.Slab(mode, hearth!, lies) : null,
                LidSeconds = lid?.Seconds ?? 0,
            },
            stated is not null,
            on switch { Standing.Rack => 0, Standing.Tin => 1 - lies, _ => lies });
    }

    private enum Standing
    {
        Tray,
        Tin,
        Rack,
        Stone,
    }
}

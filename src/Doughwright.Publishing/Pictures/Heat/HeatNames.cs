using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Heat;

/// <summary>What the givers and takers of heat are called.</summary>
internal static class HeatNames
{
    public static string Of(HeatShare share, HeatBalance balance, Rehearsal rehearsal, Voice voice) => share.Giver switch
    {
        HeatGiver.Work when share.Kilojoules < 0 => voice.Say("heat.work-lost"),
        HeatGiver.Work => voice.Words[$"heat.work.{Voice.Kebab(WayOf(balance, rehearsal).ToString())}"],
        HeatGiver.Ice => voice.Say("heat.ice"),
        HeatGiver.Vessel => voice.Say("heat.vessel"),
        HeatGiver.Air => voice.Say("heat.air"),
        _ => Capital.Of(LineName(share, balance, rehearsal)),
    };

    private static string LineName(HeatShare share, HeatBalance balance, Rehearsal rehearsal) =>
        rehearsal.Formula.FindComponent(balance.Component)?.Lines.FirstOrDefault(line => line.Id == share.Line)?.Name ?? share.Line ?? "";

    private static MixingWay WayOf(HeatBalance balance, Rehearsal rehearsal) =>
        rehearsal.Recipe.Steps.FirstOrDefault(step => step.Id == balance.Step)?.Way ?? MixingWay.ByHand;
}

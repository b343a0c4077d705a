using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Findings;

namespace Doughwright.Engine.Rehearsals;

/// <summary>What only a run can show: a dough that comes out cold, a step that never ends, heat that hurts, ovens and butter that do not suit.</summary>
internal static class RehearsalFindings
{
    public static IEnumerable<Finding> Of(RunResult here, RunResult home) =>
    [
        .. DoughMissed.Of(here, home),
        .. NeverEnds.Of(here),
        .. TakenAsAsked.Of(here),
        .. DelicateThings.Of(here),
        .. ButterCheck.Of(here),
        .. RichDough.Of(here),
        .. CoolerBoil.Of(here, home),
        .. RestNotCarried.Of(here, home),
        .. OvenTrays.Of(here),
        .. OvenLacks.Of(here),
        .. VesselsHere.Of(here),
        .. CarriedCore.Of(here, home),
        .. LowCore.Of(here),
        .. TooHotToBeLiquid.Of(here),
        .. ScaldCheck.Of(here),
        .. CookCools.Of(here),
        .. SugarCheck.Of(here.Stage),
        .. SafetyClock.Of(here),
        .. LeftOut.Of(here),
        .. HotFilling.Of(here),
        .. HighRise.Of(here.Stage),
        .. WarmSour.Of(here),
        .. SourBesideYeast.Of(here),
        .. OverRisen.Of(here),
        .. PiecesFit.Of(here),
    ];
}

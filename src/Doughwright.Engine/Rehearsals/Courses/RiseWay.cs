using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Courses;

/// <summary>What it takes to follow a bulk or a proof once more, and what it came to.</summary>
/// <param name="minutes">When each lane ended; infinite where it does not.</param>
/// <param name="growth">Growth at which each lane ends, against the volume after mixing.</param>
internal sealed class RiseWay(RisePhase phase, PerLane scale, RiseFolds folds, PerLane minutes, PerLane growth)
{
    public FollowedRise Follow()
    {
        var likely = double.IsFinite(minutes.Central) && minutes.Central > 0 ? minutes.Central : phase.OwnMinutes;
        var path = new RisePath(phase, scale, folds, likely);
        var length = likely * FollowedRise.Beyond;
        while (path.Minutes < length)
        {
            path.GoOn();
        }

        return new(phase.Input.Step, path, minutes, growth, length);
    }
}

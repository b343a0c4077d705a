namespace Doughwright.Engine.Baking.Radial;

/// <summary>Out of the oven.</summary>
/// <remarks>
/// In the oven water boils off faster than it evaporates, and what evaporates lags behind. In the room nothing boils any more, and what evaporates
/// comes from where the crumb is wet: behind all that boiled dry.
/// </remarks>
internal sealed partial class RadialRun<T>
{
    private const double Hair = 1e-3;
    private const int Halvings = 30;

    private bool isOut;
    private T owed;

    /// <summary>Out of the oven into the room, or from one place in it to another: the steps begin anew.</summary>
    public void MoveTo(RadialLanes lanes, int lane, BakeClock anew)
    {
        (clock, isOut) = (anew, true);
        surface.MoveTo(lanes, lane);
        front.Pause();
        front.CatchUp(DriedTo());
    }

    /// <summary>How deep the front can lie with nothing in its band that is wetter than the band has it.</summary>
    private T DriedTo()
    {
        var (low, high) = (front.Depth, T.Max(front.Depth, size.Reach / T.Of(grid.Dimensions)));
        for (var round = 0; round < Halvings; round++)
        {
            var middle = T.Of(0.5) * (low + high);
            var end = DryingFront<T>.EndAt(middle);
            var wetter = T.Of(0);
            foreach (ref var shell in shells.All)
            {
                wetter = T.Max(wetter, shell.Held - (size.Water * DryingFront<T>.WetShare(end, shell.Outer, shell.Inner, shell.PerThick)));
            }

            var most = T.Of(Hair) * size.Water;
            (low, high) = (T.WhereLess(most, wetter, low, middle), T.WhereLess(most, wetter, middle, high));
        }

        return low;
    }

    /// <summary>What the front moved by and the shells it passed did not hold: they give it in the steps that follow.</summary>
    private T Owes()
    {
        var gave = T.Of(0);
        foreach (ref var shell in shells.All)
        {
            gave += shell.DriedLast / shell.PerThick;
        }

        return T.Max(T.Of(0), front.Moved - (gave / size.Water));
    }
}

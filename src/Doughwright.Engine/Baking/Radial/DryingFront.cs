using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>
/// How deep a piece has dried from outside by evaporation, for a pack of lanes. Depth counts as volume over surface. What is below zero is
/// steam that settled on the surface as a film.
/// </summary>
/// <remarks>Drying spreads over a band, all wet at its inner end and all dry at its outer one, so that it moves on evenly from shell to shell.</remarks>
internal struct DryingFront<T> where T : struct, ILane<T>
{
    /// <summary>Width of the band, m. Half or double changes the loss by a few parts in a hundred. Source: house-bake-lanes.</summary>
    private const double Band = 0.004;

    private const double Hair = 5e-5;

    private T depth;
    private T flow;
    private T flowBefore;

    /// <summary>Film on the surface, as a depth of the water it would be in the crumb.</summary>
    public readonly T Film => T.Max(T.Of(0), T.Of(0) - depth);

    /// <summary>Where the crumb begins to be wholly wet.</summary>
    public readonly T End => EndAt(depth);

    /// <summary>How deep it has dried.</summary>
    public readonly T Depth => depth;

    /// <summary>By how much it moved in the last step.</summary>
    public T Moved { get; private set; }

    /// <summary>Where the crumb begins to be wholly wet when it has dried so deep.</summary>
    public static T EndAt(T depth)
    {
        var dry = T.Max(T.Of(0), depth);
        return T.WhereLess(dry, T.Of(Band / 2), T.Sqrt(T.Of(2 * Band) * dry), dry + T.Of(Band / 2));
    }

    public void Begin() => (depth, flow, flowBefore) = (T.Of(0), T.Of(0), T.Of(0));

    /// <summary>A new clock: nothing is known of the flow before.</summary>
    public void Pause() => flowBefore = flow;

    /// <summary>On to where the crumb begins to be wet by something else. A film on the surface goes first.</summary>
    public void CatchUp(T deeper) => depth = T.WhereLess(T.Of(0), depth, T.Max(depth, deeper), depth);

    /// <summary>Moves on by what evaporates in a step, told from the flow before it. Gives what left the film.</summary>
    /// <param name="ratio">Length of the step over that of the one before; 0 at first.</param>
    /// <param name="owed">What evaporated before and no crumb has given yet, as depth.</param>
    public T Advance(T length, T ratio, T owed)
    {
        var goes = length * T.Max(T.Of(0), flow + (T.Of(0.5) * ratio * (flow - flowBefore)));
        var fromFilm = T.Min(Film, goes);
        Moved = goes + owed;
        depth += Moved;
        return fromFilm;
    }

    public void Settle(T film) => depth -= film;

    /// <summary>Share of a shell that the band has not dried.</summary>
    /// <param name="outer">Depth of its outer face.</param>
    /// <param name="inner">Depth of its inner face.</param>
    /// <param name="perThick">One over the difference.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T WetShare(T end, T outer, T inner, T perThick) => T.Of(1) - ((Dried(end - outer) - Dried(end - inner)) * perThick);

    /// <summary>The band as it evaporates, from its dry end to its wet one; never so thin that nothing lies in it.</summary>
    public readonly (T From, T To) Reach()
    {
        var end = End;
        var from = T.Max(T.Of(0), end - T.Of(Band));
        return (from, T.Max(end, from + T.Of(Hair)));
    }

    /// <param name="next">What evaporates now, as depth per second.</param>
    public void Note(T next) => (flowBefore, flow) = (flow, next);

    /// <summary>What the band took out of all that lies farther out than so much.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Dried(T behind)
    {
        var reached = T.Max(T.Of(0), behind);
        var within = T.Min(reached, T.Of(Band));
        return (within * within * T.Of(1 / (2 * Band))) + (reached - within);
    }
}

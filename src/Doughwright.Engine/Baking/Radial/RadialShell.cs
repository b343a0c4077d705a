using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>One shell of a pack of lanes. All of it side by side: one look-up a shell, and one bound to check.</summary>
internal struct RadialShell<T> where T : struct, ILane<T>
{
    // What is kept, now and a step before; Total is with the vapour that dried away.
    public T Content, Before, Total, TotalBefore, Dried, DriedLast, Held, Celsius, Water;

    // Where a step begins its Newton step.
    public T Guessed, Guess, Slope, Vapour, VapourSlope, Wet;

    // What passes to the shell without, and how that follows this one and that one.
    public T Flow, Here, There;

    // Depth of both faces, and one over what lies between.
    public T Outer, Inner, PerThick;
}

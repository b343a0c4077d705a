using System.Runtime.Intrinsics;

namespace Doughwright.Engine.Numerics;

/// <summary>Work over lanes, written once for every width. One call does the whole job: the width is chosen outside its loops.</summary>
internal interface ILaneKernel
{
    /// <summary>Mark implementations NoInlining: inlined where the width is chosen, a hot loop is compiled less well.</summary>
    void Run<T>() where T : struct, ILane<T>;
}

/// <summary>Chooses the lane width. The digits do not depend on it, only the speed does.</summary>
internal static class Lanes
{
    /// <summary>Arrays of lanes have a length that is a multiple of this, so that every width divides them.</summary>
    public const int Multiple = 8;

    private static readonly int Machine =
        OperatingSystem.IsBrowser() ? 1
        : Vector512.IsHardwareAccelerated ? 8
        : Vector256.IsHardwareAccelerated ? 4
        : Vector128.IsHardwareAccelerated ? 2
        : 1;

    [ThreadStatic]
    private static int narrowed;

    /// <summary>The widest pack this machine works on at once. The browser is quickest with plain doubles.</summary>
    public static int Widest => narrowed == 0 ? Machine : narrowed;

    /// <summary>The smallest array length that holds <paramref name="count"/> lanes at any width.</summary>
    public static int Padded(int count) => (count + Multiple - 1) / Multiple * Multiple;

    public static void Run<TKernel>(ref TKernel kernel) where TKernel : ILaneKernel => Run(ref kernel, Widest);

    public static void Run<TKernel>(ref TKernel kernel, int width) where TKernel : ILaneKernel
    {
        switch (width)
        {
            case 1:
                kernel.Run<Lane1>();
                break;
            case 2:
                kernel.Run<Lane2>();
                break;
            case 4:
                kernel.Run<Lane4>();
                break;
            case 8:
                kernel.Run<Lane8>();
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(width), width, "Must be 1, 2, 4 or 8.");
        }
    }

    /// <summary>
    /// Does something with packs of another width, on this thread only: to measure one width against another, and for the test that none
    /// of them shows in the digits.
    /// </summary>
    public static TResult AtWidth<TResult>(int width, Func<TResult> work)
    {
        narrowed = width;
        try
        {
            return work();
        }
        finally
        {
            narrowed = 0;
        }
    }
}

namespace Doughwright.Engine.Baking.Radial;

/// <summary>How many Newton steps a time step of a bake may take.</summary>
internal static class NewtonPasses
{
    /// <summary>Of some thousand pieces with steps far too long for them none took them all.</summary>
    private const int Usual = 20;

    [ThreadStatic]
    private static int limited;

    public static int Most => limited == 0 ? Usual : limited;

    /// <summary>Does something with fewer, on this thread only: for the test that what does not settle is told.</summary>
    public static TResult AtMost<TResult>(int passes, Func<TResult> work)
    {
        limited = passes;
        try
        {
            return work();
        }
        finally
        {
            limited = 0;
        }
    }
}

namespace Doughwright.Engine.Numerics;

internal enum RootStatus
{
    Searching,
    Found,

    /// <summary>The function has the same sign at both ends, or as far out as the search was let go.</summary>
    NoSignChange,

    /// <summary>The evaluations ran out first.</summary>
    NotConverged,

    /// <summary>The function gave not-a-number.</summary>
    NotANumber,
}

/// <summary>
/// What a search for f(x) = 0 came to: the best <paramref name="X"/> it met, <paramref name="F"/> there, and after how many evaluations.
/// Unless <see cref="IsFound"/>, X answers nothing and only tells where the search stood.
/// </summary>
internal readonly record struct Root(RootStatus Status, double X, double F, int Evaluations)
{
    public bool IsFound => Status == RootStatus.Found;
}

/// <summary>
/// When a search is content: x known to <paramref name="X"/> (absolute), or |f| at most <paramref name="F"/>, whichever comes first.
/// </summary>
internal readonly record struct RootTolerance(double X, double F = 0, int MaxEvaluations = 60, int MaxExpansions = 8);

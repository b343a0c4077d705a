namespace Doughwright.Engine.Numerics;

/// <summary>
/// One search for f(x) = 0, turned inside out: it says which x it wants next and is told f there. So the same steps serve one scalar
/// function and many lanes evaluated together, and no lane can see another.
/// </summary>
/// <remarks>
/// Narrows a bracket by inverse quadratic interpolation where Chandrupatla's criterion trusts it and by halving where it does not; the
/// very first step is linear. An infinite f counts by its sign. Source: chandrupatla-1997.
/// </remarks>
internal struct RootSearch
{
    private const double RelativeTolerance = 4.5e-16;

    private readonly RootTolerance tolerance;
    private readonly bool expands;
    private readonly bool rising;
    private double step;
    private int expansions;

    // The bracket is a (met last) and b; c is the point that a or b replaced, where there is one.
    private (double X, double F) a, b, c;
    private bool bracketed;
    private bool hasThird;

    private RootSearch(RootTolerance tolerance, double first, double step, bool expands, bool rising)
    {
        this.tolerance = tolerance;
        this.expands = expands;
        this.rising = rising;
        this.step = step;
        Next = first;
    }

    /// <summary>Where f is wanted next; the answer once the search has ended.</summary>
    public double Next { get; private set; }

    public RootStatus Status { get; private set; }

    public int Evaluations { get; private set; }

    public readonly bool IsOver => Status != RootStatus.Searching;

    public readonly Root Result => new(Status, a.X, a.F, Evaluations);

    public static RootSearch Between(double low, double high, RootTolerance tolerance) => new(tolerance, low, high - low, false, false);

    /// <summary>
    /// From a guess outwards, in the one direction in which a function that only rises (or only falls) can reach 0, the stride doubling
    /// each time.
    /// </summary>
    public static RootSearch From(double guess, double stride, bool rising, RootTolerance tolerance) =>
        new(tolerance, guess, Math.Abs(stride), true, rising);

    /// <summary>Takes f at <see cref="Next"/>.</summary>
    public void Take(double f)
    {
        var met = (X: Next, F: f);
        Evaluations++;
        if (double.IsNaN(f))
            End(RootStatus.NotANumber, met);
        else if (Math.Abs(f) <= tolerance.F)
            End(RootStatus.Found, met);
        else if (bracketed)
            Narrow(met);
        else if (Evaluations == 1)
            Begin(met);
        else
            Bracket(met);

        if (!IsOver && Evaluations >= tolerance.MaxEvaluations)
            End(RootStatus.NotConverged, bracketed ? Best() : met);
    }

    private void Begin((double X, double F) met)
    {
        a = met;
        if (expands && met.F < 0 != rising)
            step = -step;
        Next = a.X + step;
    }

    private void Bracket((double X, double F) met)
    {
        (c, b, a) = (b, a, met);
        bracketed = a.F < 0 != b.F < 0;
        if (bracketed)
        {
            // Linear between two points; quadratic where the way here left a third.
            var linear = a.F / (a.F - b.F);
            Step(hasThird ? InverseQuadratic() : linear, 0.1);
        }
        else if (expands && expansions < tolerance.MaxExpansions)
        {
            expansions++;
            hasThird = true;
            step *= 2;
            Next = a.X + step;
        }
        else
        {
            End(RootStatus.NoSignChange, Best());
        }
    }

    private void Narrow((double X, double F) met)
    {
        if (met.F < 0 == a.F < 0)
            c = a;
        else
            (c, b) = (b, a);
        a = met;

        var xi = (a.X - b.X) / (c.X - b.X);
        var phi = (a.F - b.F) / (c.F - b.F);
        var trusted = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
        Step(trusted ? InverseQuadratic() : 0.5, 0);
    }

    /// <summary>Goes a fraction of the way from a to b, keeping a margin from both, or ends when they are close enough.</summary>
    private void Step(double fraction, double margin)
    {
        var best = Best();
        var least = 0.5 * (tolerance.X + RelativeTolerance * Math.Abs(best.X)) / Math.Abs(b.X - a.X);
        if (least > 0.5)
        {
            End(RootStatus.Found, best);
            return;
        }
        least = Math.Max(least, margin);
        var kept = fraction > least ? Math.Min(fraction, 1 - least) : double.IsNaN(fraction) ? 0.5 : least;
        Next = a.X + kept * (b.X - a.X);
    }

    private readonly double InverseQuadratic() =>
        a.F / (b.F - a.F) * (c.F / (b.F - c.F))
        + (c.X - a.X) / (b.X - a.X) * (a.F / (c.F - a.F)) * (b.F / (c.F - b.F));

    private readonly (double X, double F) Best() => Math.Abs(a.F) < Math.Abs(b.F) ? a : b;

    private void End(RootStatus status, (double X, double F) at)
    {
        a = at;
        Next = at.X;
        Status = status;
    }
}

using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Fermentation;

internal enum PriorLaw
{
    /// <summary>Central value plus so many spreads.</summary>
    Normal,

    /// <summary>Central value times e to the power of so many spreads: for what cannot be negative and varies by factors.</summary>
    LogNormal,
}

/// <summary>
/// What is known of a parameter before anything is measured. Each prior takes one dimension of the quasi-random points, in the order of the
/// list it stands in.
/// </summary>
/// <param name="Spread">Standard deviation: in the parameter's unit, or in ln.</param>
internal sealed record Prior(string Name, string Unit, double Central, double Spread, PriorLaw Law, string Source)
{
    /// <summary>Farther out than this many spreads the parameter has no meaning any more; draws beyond are taken at this edge.</summary>
    public const double Edge = 3;

    /// <summary>The value at a standard normal draw; the central value at 0, to the last digit.</summary>
    public double At(double standardNormal)
    {
        var draw = Math.Clamp(standardNormal, -Edge, Edge);
        return Law == PriorLaw.Normal ? Central + Spread * draw : Central * Elementary.Exp(Spread * draw);
    }
}

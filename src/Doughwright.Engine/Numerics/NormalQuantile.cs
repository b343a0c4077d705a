namespace Doughwright.Engine.Numerics;

/// <summary>The value below which a standard normal quantity lies with a given probability.</summary>
internal static class NormalQuantile
{
    // Around the middle q A / B in 0.180625 - q^2; in the tails, with r = sqrt(-ln p), C / D in r - 1.6 and beyond r = 5 E / F in r - 5.
    private static readonly double[] A =
    [
        3.3871328727963666080, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125,
        45921.953931549871457, 67265.770927008700853, 33430.575583588128105, 2509.0809287301226727,
    ];

    private static readonly double[] B =
    [
        1, 42.313330701600911252, 687.18700749205790830, 5394.1960214247511077,
        21213.794301586595867, 39307.895800092710610, 28729.085735721942674, 5226.4952788528545610,
    ];

    private static readonly double[] C =
    [
        1.42343711074968357734, 4.63033784615654529590, 5.76949722146069140550, 3.64784832476320460504,
        1.27045825245236838258, 0.241780725177450611770, 0.0227238449892691845833, 7.74545014278341407640e-4,
    ];

    private static readonly double[] D =
    [
        1, 2.05319162663775882187, 1.67638483018380384940, 0.689767334985100004550,
        0.148103976427480074590, 0.0151986665636164571966, 5.47593808499534494600e-4, 1.05075007164441684324e-9,
    ];

    private static readonly double[] E =
    [
        6.65790464350110377720, 5.46378491116411436990, 1.78482653991729133580, 0.296560571828504891230,
        0.0265321895265761230930, 1.24266094738807843860e-3, 2.71155556874348757815e-5, 2.01033439929228813265e-7,
    ];

    private static readonly double[] F =
    [
        1, 0.599832206555887937690, 0.136929880922735805310, 0.0148753612908506148525,
        7.86869131145613259100e-4, 1.84631831751005468180e-5, 1.42151175831644588870e-7, 2.04426310338993978564e-15,
    ];

    /// <summary>
    /// z with Phi(z) = p, for p above 0 and below 1. Stated relative error about 1e-16. Odd about one half wherever 1 - p is exact.
    /// Source: wichura-1988.
    /// </summary>
    public static double At(double p)
    {
        if (!(p > 0 && p < 1))
            throw new ArgumentOutOfRangeException(nameof(p), p, "Must be above 0 and below 1.");

        var q = p - 0.5;
        if (Math.Abs(q) <= 0.425)
        {
            var middle = 0.180625 - q * q;
            return q * (Polynomial(A, middle) / Polynomial(B, middle));
        }
        var r = Math.Sqrt(-Elementary.Log(q < 0 ? p : 1 - p));
        var z = r <= 5
            ? Polynomial(C, r - 1.6) / Polynomial(D, r - 1.6)
            : Polynomial(E, r - 5) / Polynomial(F, r - 5);
        return q < 0 ? -z : z;
    }

    private static double Polynomial(double[] coefficients, double x)
    {
        var sum = 0.0;
        for (var i = coefficients.Length - 1; i >= 0; i--)
            sum = sum * x + coefficients[i];
        return sum;
    }
}

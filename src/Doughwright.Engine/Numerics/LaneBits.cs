namespace Doughwright.Engine.Numerics;

/// <summary>
/// The layout of a double that <c>Split</c>, <c>ScaleOfTwo</c> and <c>Round</c> work with. Whole numbers go in and out of the bits by way
/// of 2^52, above which a double's last bit counts ones: that needs no conversion instruction, which 256-bit packs do not have, and it
/// cannot fail on a value that is no number.
/// </summary>
internal static class LaneBits
{
    public const int FractionBits = 52;

    public const long FractionMask = (1L << FractionBits) - 1;

    /// <summary>The bits of 1.</summary>
    public const long OfOne = 1023L << FractionBits;

    /// <summary>The bits of 2^52.</summary>
    public const long OfWhole = (1023L + FractionBits) << FractionBits;

    /// <summary>2^52 + 1023: with a whole number n added, the low bits hold the biased exponent n + 1023.</summary>
    public const double BiasOverWhole = 4503599627370496.0 + 1023.0;

    /// <summary>2^52 + 2^51: adding and taking it away again leaves a double without its fraction, rounded to even.</summary>
    public const double RoundingShift = 6755399441055744.0;

    public const double RootTwo = 1.4142135623730951;
}

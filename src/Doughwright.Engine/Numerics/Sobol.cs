using System.Globalization;

namespace Doughwright.Engine.Numerics;

/// <summary>
/// The Sobol sequence: points that fill the unit cube evenly, the same for everyone and for ever. Unscrambled, in Gray-code order.
/// Source: joe-kuo-2008.
/// </summary>
internal static class Sobol
{
    private const int Bits = 32;
    private const double OneOverTwoTo32 = 1.0 / 4294967296.0;

    private static readonly uint[][] Directions = ReadDirections();

    public static int Dimensions => Directions.Length;

    /// <summary>One coordinate of one point, in [0, 1). Points and dimensions count from 0; point 0 is the origin.</summary>
    public static double Coordinate(int index, int dimension)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfNegative(dimension);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(dimension, Dimensions);

        var directions = Directions[dimension];
        var bits = 0u;
        var gray = (uint)(index ^ (index >> 1));
        for (var i = 0; gray != 0; i++, gray >>= 1)
        {
            if ((gray & 1) != 0)
                bits ^= directions[i];
        }
        return bits * OneOverTwoTo32;
    }

    private static uint[][] ReadDirections()
    {
        using var stream = typeof(Sobol).Assembly.GetManifestResourceStream("sobol-directions.txt")
            ?? throw new InvalidOperationException("The table of direction numbers is missing from the engine.");
        using var reader = new StreamReader(stream);
        var dimensions = new List<uint[]>();
        while (reader.ReadLine() is { } line)
        {
            if (!line.StartsWith('#'))
                dimensions.Add(Extend([.. line.Split(' ').Select(word => uint.Parse(word, CultureInfo.InvariantCulture))]));
        }
        return [.. dimensions];
    }

    /// <summary>From a row (dimension, degree s, inner bits a, m_1 ... m_s) to 32 direction numbers by its recurrence.</summary>
    private static uint[] Extend(uint[] row)
    {
        var degree = (int)row[1];
        var inner = row[2];
        var directions = new uint[Bits];
        // The first dimension has no polynomial: all its m are 1.
        if (degree == 0)
            return [.. Enumerable.Range(1, Bits).Select(i => 1u << (Bits - i))];

        for (var i = 0; i < Bits; i++)
        {
            if (i < degree)
            {
                directions[i] = row[3 + i] << (Bits - 1 - i);
                continue;
            }
            var next = directions[i - degree] ^ (directions[i - degree] >> degree);
            for (var k = 1; k < degree; k++)
            {
                if ((inner >> (degree - 1 - k) & 1) != 0)
                    next ^= directions[i - k];
            }
            directions[i] = next;
        }
        return directions;
    }
}

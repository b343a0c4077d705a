namespace Doughwright.Engine.Quantities;

/// <summary>
/// Whole units by largest remainder: every part gets the whole units in it, and the units still missing go to the largest remainders; among
/// equal ones the larger part comes first. Units too many come off the smallest remainders, of the larger parts first.
/// </summary>
internal static class Apportionment
{
    /// <summary>The units of every part; they add up to the total.</summary>
    /// <param name="quotas">Parts in units, none negative, up to 1e12.</param>
    /// <param name="total">What the units add up to, not below zero.</param>
    public static IReadOnlyList<long> Units(IReadOnlyList<double> quotas, long total)
    {
        foreach (var quota in quotas)
        {
            Require.Within(quota, 0, 1e12, "A part to share out");
        }

        if (quotas.Count == 0)
        {
            return [];
        }

        // Rounding noise of the sums before is no remainder: 2.9999999999999996 is 3.
        var parts = quotas.Select(quota => Math.Round(quota, 6)).ToArray();
        var units = parts.Select(part => (long)Math.Floor(part)).ToArray();
        var order = Enumerable.Range(0, parts.Length)
            .OrderByDescending(i => Math.Round(parts[i] - Math.Floor(parts[i]), 6))
            .ThenByDescending(i => parts[i])
            .ToArray();
        var missing = total - units.Sum();
        for (var i = 0; missing > 0; i = (i + 1) % order.Length, missing--)
        {
            units[order[i]]++;
        }

        var givers = Enumerable.Range(0, parts.Length)
            .OrderBy(i => Math.Round(parts[i] - Math.Floor(parts[i]), 6))
            .ThenByDescending(i => parts[i])
            .ToArray();
        while (missing < 0)
        {
            var before = missing;
            foreach (var taken in givers.Where(i => units[i] > 0).Take((int)Math.Min(-missing, givers.Length)))
            {
                units[taken]--;
                missing++;
            }

            if (missing == before)
            {
                throw new ArgumentOutOfRangeException(nameof(total), total, "There is nothing left to take from.");
            }
        }

        return units;
    }
}

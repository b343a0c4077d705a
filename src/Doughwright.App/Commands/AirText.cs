using System.Globalization;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.App.Commands;

/// <summary>
/// Air as typed: "17C", or by the clock "17C@22:00,21C@07:00". The clock ends here: with the start it becomes air over elapsed time, the same every day.
/// </summary>
internal static class AirText
{
    private const int MinutesOfDay = 24 * 60;

    /// <summary>Days that are laid out. The longest recipe, a few steps of at most 14 days, ends before them; after them the last air stays.</summary>
    private const int Days = 60;

    private const int MostKnots = 48;

    public static AirProfile? Read(Given given, Options options)
    {
        var start = given.One(options.Start) is { } typedStart ? Clock(given, options.Start.Name, typedStart) : null;
        if (given.One(options.Air) is not { } typed)
        {
            return null;
        }

        if (!typed.Contains('@'))
        {
            return given.Temperature(options.Air.Name, typed, Limits.Air) is { } air ? AirProfile.Constant(air) : null;
        }

        if (!given.Has(options.Start))
        {
            given.Faults.Add("profile-without-start", ("option", options.Air.Name), ("beside", options.Start.Name));
        }

        var knots = Knots(given, options.Air.Name, typed);
        return start is { } minute && knots is not null ? Profile(knots, minute) : null;
    }

    /// <summary>Minutes after midnight of "22:00" or "7:05"; a fault when it is no time of day.</summary>
    public static int? Clock(Given given, string option, string text)
    {
        var halves = text.Split(':');
        if (halves.Length == 2 && halves[0].Length is 1 or 2 && halves[^1].Length == 2
            && int.TryParse(halves[0], NumberStyles.None, CultureInfo.InvariantCulture, out var hours) && hours < 24
            && int.TryParse(halves[^1], NumberStyles.None, CultureInfo.InvariantCulture, out var minutes) && minutes < 60)
        {
            return (hours * 60) + minutes;
        }

        given.Faults.Add("clock-wanted", ("option", option), ("given", text));
        return null;
    }

    /// <summary>Air over elapsed time, from what holds at the start on.</summary>
    private static AirProfile Profile(SortedList<int, Temperature> knots, int start)
    {
        var now = knots.LastOrDefault(knot => knot.Key <= start, knots.Last()).Value;
        var later = from day in Enumerable.Range(0, Days)
                    from knot in knots
                    let elapsed = (day * MinutesOfDay) + knot.Key - start
                    where elapsed > 0
                    select (Duration.FromMinutes(elapsed), knot.Value);
        return knots.Count == 1 ? AirProfile.Constant(now) : AirProfile.Of(later.Prepend((Duration.Zero, now)));
    }

    private static SortedList<int, Temperature>? Knots(Given given, string option, string typed)
    {
        var pieces = typed.Split(',');
        if (pieces.Length > MostKnots)
        {
            given.Faults.Add("profile-too-long", ("option", option), ("count", pieces.Length), ("most", MostKnots));
            return null;
        }

        var knots = new SortedList<int, Temperature>();
        var sound = true;
        foreach (var piece in pieces)
        {
            var sign = piece.IndexOf('@');
            if (sign < 0)
            {
                given.Faults.Add("profile-wanted", ("option", option), ("given", piece.Trim()), ("example", given.Faults.Voice.Words["example-air-profile"]));
                sound = false;
                continue;
            }

            var air = given.Temperature(option, piece[..sign].Trim(), Limits.Air);
            var minute = Clock(given, option, piece[(sign + 1)..].Trim());
            if (air is { } degrees && minute is { } at && !knots.TryAdd(at, degrees))
            {
                given.Faults.Add("profile-same-time", ("option", option), ("time", piece[(sign + 1)..].Trim()));
                sound = false;
            }

            sound &= air is not null && minute is not null;
        }

        return sound ? knots : null;
    }
}

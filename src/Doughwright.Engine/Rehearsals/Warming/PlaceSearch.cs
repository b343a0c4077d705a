using Doughwright.Engine.Heat.Warming;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Warming;

/// <summary>Water for a place: so much, so warm, renewed so often.</summary>
internal sealed record PlaceRecipe(double WaterKilograms, PlaceFilling Filling);

/// <summary>
/// Finds the water for a place in the likely lane. Every household warmth and up to three renewals are tried; for each the amount is solved so
/// that the mean of the place over the step is the target. The steadiest is taken, and a renewal must earn its trouble.
/// </summary>
/// <param name="minutes">How long the step is thought to take in that place.</param>
internal sealed class PlaceSearch(WarmPlace place, double target, int minutes, Stage stage)
{
    /// <summary>The place counts as right within so many kelvins.</summary>
    public const double Tolerance = 1;

    private const int MostRenewals = 3;
    private const int ShortestRenewal = 20;
    private const double LeastKilograms = 0.25;
    private const double FreezesCelsius = 0;
    private const double KilogramSteps = 0.05;

    /// <summary>Share of the time that one more renewal must win.</summary>
    private const double RenewalCost = 0.08;

    /// <summary>A mean this near to the target is the target, once the water is rounded.</summary>
    public const double Hit = 0.3;

    private static double HottestBath => Places.HottestBath.Celsius;

    private bool IsWarming => place.IsWarming;

    /// <summary>Water from the fridge. What freezes there is not poured.</summary>
    private double Coldest => Math.Max(FreezesCelsius, stage.Kitchen.Fridge.Celsius);

    public PlaceRecipe Find()
    {
        var best = (place.IsBath ? Baths() : Jugs()).Where(option => option.Recipe is not null).DefaultIfEmpty().MaxBy(option => option.Score);
        return best.Recipe ?? Nearest();
    }

    private IEnumerable<(PlaceRecipe? Recipe, double Score)> Jugs() =>
        from celsius in Warmths()
        from renewal in Renewals()
        let filling = new PlaceFilling(celsius, place.Lead, renewal)
        let kilograms = SolveKilograms(filling)
        where kilograms is not null
        select Rated(kilograms.Value, filling);

    private IEnumerable<(PlaceRecipe? Recipe, double Score)> Baths() =>
        from renewal in Renewals()
        let celsius = SolveCelsius(renewal)
        where celsius is not null
        select Rated(place.BathKilograms, new(celsius.Value, place.Lead, renewal));

    private (PlaceRecipe? Recipe, double Score) Rated(double kilograms, PlaceFilling filling)
    {
        var trace = place.Follow(kilograms, filling, 0, minutes);
        var share = (double)trace.Within(place.Around, target, Tolerance, minutes) / minutes;
        var renewals = Count(filling.RenewEvery, minutes);
        var reaches = Math.Abs(trace.Mean(place.Around, minutes) - target) <= Hit;
        return reaches ? (new(kilograms, filling), share - (RenewalCost * renewals)) : (null, double.NegativeInfinity);
    }

    /// <summary>Renewals that fall within so many minutes.</summary>
    public static int Count(Duration? every, int minutes) => every is { } interval ? (int)Math.Ceiling(minutes / interval.Minutes) - 1 : 0;

    /// <summary>Water as a household has it: warm from the tap, from a kettle with cold, just off the boil; or cold.</summary>
    private IEnumerable<double> Warmths() => IsWarming
        ? new double[] { 35, 40, 45, 50, 60, 70, 80, 90 }.Where(celsius => celsius > target + 3 && celsius <= Hottest)
        : new[] { stage.Kitchen.Tap.Celsius, Coldest }.Distinct().Where(celsius => celsius < target - 3);

    /// <summary>Water that was poured is some degrees below the boil.</summary>
    private double Hottest => stage.Boils.Celsius - 5;

    private IEnumerable<Duration?> Renewals()
    {
        yield return null;
        for (var renewals = 1; renewals <= MostRenewals; renewals++)
        {
            var every = Math.Ceiling(minutes / (5.0 * (renewals + 1))) * 5;
            if (every < ShortestRenewal)
            {
                yield break;
            }

            yield return Duration.FromMinutes(every);
        }
    }

    private double Miss(double kilograms, PlaceFilling filling) =>
        (place.Follow(kilograms, filling, 0, minutes).Mean(place.Around, minutes) - target) * (IsWarming ? 1 : -1);

    /// <summary>The amount with which the mean is the target, rounded as people measure; null when none between a cup and a full place does it.</summary>
    private double? SolveKilograms(PlaceFilling filling)
    {
        var root = Roots.Between(kilograms => Miss(kilograms, filling), LeastKilograms, place.MostWaterKilograms, new(X: 0.001, F: 0.001));
        return root.IsFound ? Math.Round(root.X / KilogramSteps) * KilogramSteps : null;
    }

    /// <summary>The warmth with which a bath has the target as its mean, to half a degree, as people pour it; null when it would have to be hotter than yeast bears.</summary>
    private double? SolveCelsius(Duration? renewal)
    {
        // A dough that is warmer than the target makes a bath wanted that is colder than it.
        var root = Roots.Between(
            celsius => place.Follow(place.BathKilograms, new(celsius, place.Lead, renewal), 0, minutes).Mean(place.Around, minutes) - target,
            Coldest,
            HottestBath,
            new(X: 0.001, F: 0.001));
        return root.IsFound ? Math.Round(root.X * 2) / 2 : null;
    }

    /// <summary>
    /// The nearest that can be done where nothing does it: the place full of the hottest, or coldest, water, renewed as often as anybody will; or
    /// where even the least is too much, the least of the mildest.
    /// </summary>
    private PlaceRecipe Nearest()
    {
        var (mild, strong) = place.IsBath
            ? IsWarming ? (Coldest, HottestBath) : (HottestBath, Coldest)
            : (Warmths().DefaultIfEmpty(Coldest).MinBy(celsius => Math.Abs(celsius - target)), Warmths().DefaultIfEmpty(Coldest).MaxBy(celsius => Math.Abs(celsius - target)));
        var least = new PlaceRecipe(place.IsBath ? place.BathKilograms : LeastKilograms, new(mild, place.Lead, null));
        return Miss(least.WaterKilograms, least.Filling) > 0 ? least : new(place.MostWaterKilograms, new(strong, place.Lead, Renewals().Last()));
    }
}

using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Fermentation;

/// <summary>A dough per 100 g of flour, one value per lane: what <see cref="RiseState"/> starts from.</summary>
internal sealed record RiseDough
{
    /// <summary>Water that carbon dioxide dissolves in, g.</summary>
    public required double[] WaterGrams { get; init; }

    /// <summary>Sugar that yeast can use, as sucrose, g; what the flour brings is <see cref="RiseParameters.Substrate"/>.</summary>
    public required double[] SugarGrams { get; init; }

    /// <summary>Yeast as fresh yeast, g.</summary>
    public required double[] FreshYeastGrams { get; init; }

    public required double[] GasFreeMillilitres { get; init; }

    public required double[] OsmoticFactor { get; init; }

    public required double[] SpiceFactor { get; init; }

    /// <summary>The sourdough that raises it; null for bread yeast.</summary>
    public Culture? Culture { get; init; }

    public int Lanes => WaterGrams.Length;

    /// <summary>The same matter in every lane, its yeast as sensitive as the lane's parameters say.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A dough without flour, water or yeast does not rise.</exception>
    public static RiseDough Of(DoughMatter matter, RiseParameters parameters)
    {
        var flour = AboveZero(matter.Flour, nameof(matter.Flour)).Grams / 100;
        var activity = matter.WaterActivity;
        return new()
        {
            WaterGrams = Every(parameters.Lanes, AboveZero(matter.Water, nameof(matter.Water)).Grams / flour),
            SugarGrams = Every(parameters.Lanes, matter.Sugar.Grams / flour),
            FreshYeastGrams = Every(parameters.Lanes, AboveZero(matter.FreshYeast, nameof(matter.FreshYeast)).Grams / flour),
            GasFreeMillilitres = Every(parameters.Lanes, matter.GasFreeMillilitres),
            OsmoticFactor = [.. parameters.LowestActivity.Select(lowest => Fermentation.OsmoticFactor.Of(activity, lowest))],
            SpiceFactor = Every(parameters.Lanes, Require.Within(matter.SpiceFactor, 0, 1, "Spice factor")),
        };
    }

    private static double[] Every(int lanes, double value) => [.. Enumerable.Repeat(value, lanes)];

    private static Mass AboveZero(Mass mass, string what) =>
        mass > Mass.Zero ? mass : throw new ArgumentOutOfRangeException(what, mass, $"{what} must be above 0.");
}

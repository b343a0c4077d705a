namespace Doughwright.Engine.Ingredients;

/// <summary>
/// What 100 g of something edible consists of, in grams. Null is unknown and stays unknown through every sum: it is never taken as zero.
/// </summary>
/// <param name="Water">Water, 0 to 100.</param>
/// <param name="Carbohydrate">Carbohydrate by difference: sugars, starch and fibre included.</param>
/// <param name="Sugars">Mono- and disaccharides, a part of the carbohydrate.</param>
/// <param name="Fibre">A part of the carbohydrate.</param>
/// <param name="Ash">Ash, salt included.</param>
/// <param name="Salt">Sodium chloride (sodium x 2.54), a part of the ash.</param>
/// <param name="Lactose">A part of the sugars; bread yeast does not ferment it.</param>
public sealed record Composition(
    double? Water,
    double? Protein,
    double? Fat,
    double? Carbohydrate,
    double? Sugars,
    double? Fibre,
    double? Ash,
    double? Salt,
    double? Lactose,
    double? Alcohol)
{
    /// <summary>Nothing is known.</summary>
    public static Composition Unknown { get; } = new(null, null, null, null, null, null, null, null, null, null);

    /// <summary>The composition of a mixture. A constituent that is unknown in any part that has mass is unknown in the mixture.</summary>
    /// <param name="parts">Masses in any one unit, none negative, not all zero.</param>
    public static Composition Mix(IReadOnlyList<(double Mass, Composition Composition)> parts)
    {
        var total = parts.Sum(part => part.Mass);
        double? Share(Func<Composition, double?> constituent) =>
            parts.Where(part => part.Mass > 0).Aggregate((double?)0, (sum, part) => sum + (part.Mass / total * constituent(part.Composition)));
        return Of(Share);
    }

    /// <summary>A composition of which every constituent is found in the same way.</summary>
    internal static Composition Of(Func<Func<Composition, double?>, double?> found) => new(
        found(c => c.Water),
        found(c => c.Protein),
        found(c => c.Fat),
        found(c => c.Carbohydrate),
        found(c => c.Sugars),
        found(c => c.Fibre),
        found(c => c.Ash),
        found(c => c.Salt),
        found(c => c.Lactose),
        found(c => c.Alcohol));
}
